import { awgDiameter_mm } from "../../../engine/index.ts";

/** Thickest and thinnest gauge that is sold as wire: 4/0 and 40. */
export const thickestGauge = -3;
export const thinnestGauge = 40;

/** The whole gauge of this diameter, or null when it lies further than 0.5 % from every one of them. */
export function gaugeOfDiameter(diameter_mm: number): number | null {
  if (!(diameter_mm > 0)) return null;
  const gauge = Math.round(36 - (39 * Math.log(diameter_mm / 0.127)) / Math.log(92));
  if (gauge < thickestGauge || gauge > thinnestGauge) return null;
  // Neighbouring gauges are 12 % apart; half a percent is closer than wire is drawn to.
  return Math.abs(awgDiameter_mm(gauge) / diameter_mm - 1) < 0.005 ? gauge : null;
}

/** As it is written on a reel: "14 AWG", "2/0 AWG". */
export function nameOfGauge(gauge: number): string {
  return gauge < 0 ? `${1 - gauge}/0 AWG` : `${gauge} AWG`;
}
