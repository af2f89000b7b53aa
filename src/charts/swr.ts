/** Reference of every SWR on the page: the cable that is in use. */
export const reference_ohm = 50;

/**
 * SWR against 50 ohm: (1 + g)/(1 − g), g = |Z − 50|/|Z + 50|. Infinite at R = 0, NaN for R < 0 (no passive load) and
 * for what is not finite.
 */
export function swr(resistance_ohm: number, reactance_ohm: number): number {
  if (!(resistance_ohm >= 0) || !Number.isFinite(reactance_ohm + resistance_ohm)) return Number.NaN;
  const x2 = reactance_ohm * reactance_ohm;
  const near = (resistance_ohm - reference_ohm) ** 2 + x2;
  const far = (resistance_ohm + reference_ohm) ** 2 + x2;
  const g = Math.sqrt(near / far);
  return (1 + g) / (1 - g);
}
