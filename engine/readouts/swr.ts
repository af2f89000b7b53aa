/**
 * Standing-wave ratio of a load on a line: (1 + |Γ|)/(1 − |Γ|), Γ = (Z − Z₀)/(Z + Z₀).
 * Infinite where the load takes no power (R ≤ 0).
 */
export function swr(resistance_ohm: number, reactance_ohm: number, line_ohm: number): number {
  if (!(resistance_ohm > 0)) return Number.isNaN(resistance_ohm) ? Number.NaN : Number.POSITIVE_INFINITY;
  const x2 = reactance_ohm * reactance_ohm;
  const away = Math.sqrt((resistance_ohm - line_ohm) ** 2 + x2);
  const towards = Math.sqrt((resistance_ohm + line_ohm) ** 2 + x2);
  return (towards + away) / (towards - away);
}
