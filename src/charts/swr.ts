/** Reference of every SWR on the page: the cable that is in use. */
export const reference_ohm = 50;

/**
 * SWR against 50 ohm: (t + n)/(t − n), n = |Z − 50|, t = |Z + 50|. Infinite where the load takes no power (R ≤ 0),
 * NaN for what is not finite.
 */
export function swr(resistance_ohm: number, reactance_ohm: number): number {
  if (!Number.isFinite(resistance_ohm + reactance_ohm)) return Number.NaN;
  if (resistance_ohm <= 0) return Number.POSITIVE_INFINITY;
  const x2 = reactance_ohm * reactance_ohm;
  const n = Math.sqrt((resistance_ohm - reference_ohm) ** 2 + x2);
  const t = Math.sqrt((resistance_ohm + reference_ohm) ** 2 + x2);
  return (t + n) / (t - n);
}
