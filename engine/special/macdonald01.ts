import { macdonaldRules } from "./macdonaldRules.ts";

/** Below this |w| the sixteen-point rule serves, from it on the eight-point one. */
export const MACDONALD_SWITCH = 8;

/**
 * Writes √(2w/π) e^w K₀(w) and the same of K₁, for complex w: out = Re, Im of order 0, Re, Im of order 1.
 *
 * Accuracy: 5e-13 relative for |w| ≥ 3.5 and |arg w| ≤ 90°, 2e-13 for |w| ≥ 8 and |arg w| ≤ 97°,
 *   5e-13 for |w| ≥ 12 and |arg w| ≤ 125° (see `macdonaldRules`). Not for smaller |w|.
 * @returns out
 */
export function macdonald01(out: Float64Array, wr: number, wi: number): Float64Array {
  const wi2 = wi * wi;
  const { x0, c0, x1, c1 } =
    wr * wr + wi2 < MACDONALD_SWITCH * MACDONALD_SWITCH ? macdonaldRules.fine : macdonaldRules.coarse;
  let re0 = 1;
  let im0 = 0;
  let re1 = 1;
  let im1 = 0;
  for (let i = 0; i < x0.length; i++) {
    const a = wr + x0[i]!;
    const b = wr + x1[i]!;
    const f = c0[i]! / (a * a + wi2);
    const g = c1[i]! / (b * b + wi2);
    re0 += f * a;
    im0 -= f * wi;
    re1 += g * b;
    im1 -= g * wi;
  }
  out[0] = re0;
  out[1] = im0;
  out[2] = re1;
  out[3] = im1;
  return out;
}
