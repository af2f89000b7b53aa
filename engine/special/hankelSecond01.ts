import { hankelFirst01 } from "./hankelFirst01.ts";

/**
 * Writes H₀⁽²⁾(z) and H₁⁽²⁾(z) for complex z ≠ 0 with Re z ≥ 0: out = Re, Im of order 0, Re, Im of order 1.
 *
 * H⁽²⁾(z) is the conjugate of H⁽¹⁾ at the conjugate of z; accuracy as there.
 * @returns out; infinite or NaN at z = 0
 */
export function hankelSecond01(out: Float64Array, zr: number, zi: number): Float64Array {
  hankelFirst01(out, zr, -zi);
  out[1] = -out[1]!;
  out[3] = -out[3]!;
  return out;
}
