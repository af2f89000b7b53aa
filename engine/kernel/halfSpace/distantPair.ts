import { gaussLegendre } from "../../quad/gaussLegendre.ts";
import type { Remainders } from "./Remainders.ts";
import { readLine } from "./readLine.ts";

/** Distance to the image over the longer segment from which on this serves … */
export const DISTANT = 3;
/** … and from which on 2 × 2 points do; 3 × 3 below. */
export const FAR = 6;

/** |k| times the longer segment up to which those do: for each next entry one point more. */
const POINTS_BY_PHASE = [0.4, 1, 2, 3, 4.5, 6, 8, 10, 12] as const;
const rules = Array.from({ length: 4 + POINTS_BY_PHASE.length }, (_, n) => gaussLegendre(Math.max(1, n)));
const kernel = new Float64Array(10);

/**
 * Adds the moments of two segments that are far from each other (or from each other's image) by a product rule on the
 * whole kernels, static part and all.
 *
 * Accuracy: 3e-5 of the moment (2 × 2 points at 6 lengths; 3 × 3 at 3 lengths 1e-6) for segments up to 0.05 wavelength
 *   in the medium of g, and one point more for each step of POINTS_BY_PHASE beyond, besides the table's error.
 *
 * @param out,at    as for a PairKernel
 * @param x0,y0,z0  start of s minus start of t, or of its image [m]; z0 is the sum ζ of the starts
 * @param depth0    depth of the start of t, where it is in soil and s in air [m]
 * @param ratio     distance of the middles over the longer segment
 */
export function distantPair(
  out: Float64Array,
  at: number,
  remainders: Remainders,
  x0: number,
  y0: number,
  z0: number,
  depth0: number,
  sx: number,
  sy: number,
  sz: number,
  Ls: number,
  tx: number,
  ty: number,
  tz: number,
  Lt: number,
  ratio: number,
): void {
  const { staticPart: A, mirrored } = remainders;
  const zetaPerT = mirrored ? tz : -tz;
  const level = sx * tx + sy * ty + (mirrored ? 0 : sz * tz);
  const upright = mirrored ? sz * tz : 0;
  const line = sz === 0 && tz === 0 ? remainders.levelLine(z0) : null;
  let points = ratio > FAR ? 2 : 3;
  const phase = remainders.k * Math.max(Ls, Lt);
  for (let i = 0; i < POINTS_BY_PHASE.length && phase > POINTS_BY_PHASE[i]!; i++) points++;
  const { node, weight } = rules[points]!;
  const q = node.length;
  const area = Ls * Lt;
  for (let i = 0; i < q; i++) {
    const u = node[i]!;
    const ax = x0 + u * Ls * sx;
    const ay = y0 + u * Ls * sy;
    const az = z0 + u * Ls * sz;
    for (let j = 0; j < q; j++) {
      const v = node[j]!;
      const x = ax - v * Lt * tx;
      const y = ay - v * Lt * ty;
      const zeta = az + v * Lt * zetaPerT;
      const rho = Math.sqrt(x * x + y * y);
      if (line) readLine(kernel, line, rho);
      else remainders.read(kernel, rho, zeta, depth0 - v * Lt * tz);
      const gr = kernel[8]!;
      const gi = kernel[9]!;
      const w = area * weight[i]! * weight[j]!;
      let re = level * (kernel[0]! + A[0]! * gr - A[1]! * gi);
      let im = level * (kernel[1]! + A[0]! * gi + A[1]! * gr);
      if (!line) {
        re += upright * (kernel[6]! + A[6]! * gr - A[7]! * gi);
        im += upright * (kernel[7]! + A[6]! * gi + A[7]! * gr);
        if (rho > 0) {
          // ρ̂ from source to observer; ρ/(R + ζ) with the static part.
          const turn = (sz * (x * tx + y * ty) - tz * (x * sx + y * sy)) / rho;
          const angle = rho / (Math.sqrt(rho * rho + zeta * zeta) + zeta);
          re += turn * (kernel[4]! + angle * (A[4]! * gr - A[5]! * gi));
          im += turn * (kernel[5]! + angle * (A[4]! * gi + A[5]! * gr));
        }
      }
      re *= w;
      im *= w;
      out[at]! += re;
      out[at + 1]! += u * re;
      out[at + 2]! += v * re;
      out[at + 3]! += u * v * re;
      out[at + 4]! += im;
      out[at + 5]! += u * im;
      out[at + 6]! += v * im;
      out[at + 7]! += u * v * im;
      out[at + 8]! += w * (kernel[2]! + A[2]! * gr - A[3]! * gi);
      out[at + 9]! += w * (kernel[3]! + A[2]! * gi + A[3]! * gr);
    }
  }
}
