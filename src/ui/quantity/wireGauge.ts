/**
 * American wire gauge. d(n) = 0.127 mm · 92^((36 − n)/39), with 2/0, 3/0, 4/0 counted as −1, −2, −3.
 * Exact by the definition in ASTM B258 (formula from memory).
 */
export function gaugeDiameter_mm(gauge: number): number {
  return 0.127 * 92 ** ((36 - gauge) / 39);
}

/** Thickest and thinnest gauge that is sold as wire: 4/0 and 40. */
export const thickestGauge = -3;
export const thinnestGauge = 40;

/** The whole gauge of this diameter, or null when it lies further than 0.5 % from every one of them. */
export function gaugeOfDiameter(diameter_mm: number): number | null {
  if (!(diameter_mm > 0)) return null;
  const gauge = Math.round(36 - (39 * Math.log(diameter_mm / 0.127)) / Math.log(92));
  if (gauge < thickestGauge || gauge > thinnestGauge) return null;
  return Math.abs(gaugeDiameter_mm(gauge) / diameter_mm - 1) < 0.005 ? gauge : null;
}

/** As it is written on a reel: "14 AWG", "2/0 AWG". */
export function nameOfGauge(gauge: number): string {
  return gauge < 0 ? `${1 - gauge}/0 AWG` : `${gauge} AWG`;
}
