import type { Cut } from "../../engine/index.ts";

/**
 * Gain in dBi at an angle of a cut whose angles rise, linear in dB between neighbours. A sample that is not finite
 * makes its two intervals NaN; asked exactly on a sample, it answers that sample. NaN outside the cut.
 */
export function readCut(cut: Cut, angle: number): number {
  const a = cut.angle_deg;
  const g = cut.gain_dBi;
  const last = a.length - 1;
  if (last < 0 || !(angle >= a[0]! && angle <= a[last]!)) return Number.NaN;
  let lo = 0;
  let hi = last;
  while (hi - lo > 1) {
    const mid = (lo + hi) >> 1;
    if (a[mid]! <= angle) lo = mid;
    else hi = mid;
  }
  if (angle === a[lo]!) return g[lo]!;
  if (angle === a[hi]!) return g[hi]!;
  const t = (angle - a[lo]!) / (a[hi]! - a[lo]!);
  const value = g[lo]! + t * (g[hi]! - g[lo]!);
  return Number.isFinite(value) ? value : Number.NaN;
}
