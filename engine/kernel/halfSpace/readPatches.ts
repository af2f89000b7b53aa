import type { KernelPatches } from "./KernelPatches.ts";
import { readSeries } from "./readSeries.ts";

/**
 * Evaluates S_k e^{+jk0 R} at one point by the series of the rectangle it lies in.
 *
 * Nearer than the innermost rectangles, S is that of the point in the same direction at their inner edge: it changes there
 * by |k1| R of itself, while a series carried inwards would swell. Points a little beyond rMax or above zetaMax are
 * extrapolated by the nearest rectangle.
 *
 * @param out 8 numbers, written: Re, Im of S1..S4 times e^{+jk0 R} [1/m]
 */
export function readPatches(out: Float64Array, patches: KernelPatches, rho: number, zeta: number): Float64Array {
  const { bounds, halves, begin, series, rMax, octaves } = patches;
  let far = rMax;
  let o = 0;
  const size = Math.max(rho, zeta);
  const innermost = rMax * 2 ** -octaves;
  if (size < innermost) {
    const outwards = size > 0 ? innermost / size : 0;
    rho *= outwards;
    zeta = size > 0 ? zeta * outwards : innermost;
  }
  while (size < 0.5 * far && o < octaves - 1) {
    far *= 0.5;
    o++;
  }
  let r = 3 * o;
  if (rho < 0.5 * far) r += 2;
  else if (zeta >= 0.5 * far && bounds[4 * r + 7]! > bounds[4 * r + 6]!) r += 1;
  for (let child = halves[2 * r]!; child !== 0; child = halves[2 * r]!) {
    const beyond = halves[2 * r + 1] === 0 ? rho >= bounds[4 * child + 1]! : zeta >= bounds[4 * child + 3]!;
    r = beyond ? child + 1 : child;
  }
  const b = 4 * r;
  const x = (2 * rho - bounds[b]! - bounds[b + 1]!) / (bounds[b + 1]! - bounds[b]!);
  const y = (2 * zeta - bounds[b + 2]! - bounds[b + 3]!) / (bounds[b + 3]! - bounds[b + 2]!);
  return readSeries(out, series, begin[r]!, x, y);
}
