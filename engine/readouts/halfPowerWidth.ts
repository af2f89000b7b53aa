import type { Cut } from "./PlanReadout.ts";

/**
 * Width between the first −3.0103 dB points on either side of forward (angle 0) of an azimuth cut, by linear
 * interpolation between samples [degrees]; null when the pattern never falls that far on either side.
 */
export function halfPowerWidth(cut: Cut): number | null {
  const ahead = cut.angle_deg.indexOf(0);
  const level = cut.gain_dBi[ahead]! - 10 * Math.log10(2);
  const edge = (step: 1 | -1): number | null => {
    for (let i = ahead; i + step >= 0 && i + step < cut.gain_dBi.length; i += step) {
      const here = cut.gain_dBi[i]!;
      const next = cut.gain_dBi[i + step]!;
      if (next <= level && here > level) {
        const part = Number.isFinite(next) ? (here - level) / (here - next) : 1;
        return Math.abs(cut.angle_deg[i]! + step * part);
      }
    }
    return null;
  };
  const left = edge(1);
  const right = edge(-1);
  return left === null || right === null ? null : left + right;
}
