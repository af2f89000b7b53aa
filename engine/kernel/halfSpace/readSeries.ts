import { ORDER } from "./chebyshevGrid.ts";

const tx = new Float64Array(ORDER);
const ty = new Float64Array(ORDER);

/**
 * Σ c_ij T_i(x) T_j(y) for eight interleaved functions.
 *
 * @param out    8 numbers, written
 * @param c      coefficients as from `toSeries`, from `at` on
 */
export function readSeries(out: Float64Array, c: Float64Array, at: number, x: number, y: number): Float64Array {
  tx[0] = 1;
  tx[1] = x;
  ty[0] = 1;
  ty[1] = y;
  for (let k = 2; k < ORDER; k++) {
    tx[k] = 2 * x * tx[k - 1]! - tx[k - 2]!;
    ty[k] = 2 * y * ty[k - 1]! - ty[k - 2]!;
  }
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let s4 = 0;
  let s5 = 0;
  let s6 = 0;
  let s7 = 0;
  let n = at;
  for (let i = 0; i < ORDER; i++) {
    const xi = tx[i]!;
    for (let j = 0; j < ORDER; j++) {
      const w = xi * ty[j]!;
      s0 += w * c[n]!;
      s1 += w * c[n + 1]!;
      s2 += w * c[n + 2]!;
      s3 += w * c[n + 3]!;
      s4 += w * c[n + 4]!;
      s5 += w * c[n + 5]!;
      s6 += w * c[n + 6]!;
      s7 += w * c[n + 7]!;
      n += 8;
    }
  }
  out[0] = s0;
  out[1] = s1;
  out[2] = s2;
  out[3] = s3;
  out[4] = s4;
  out[5] = s5;
  out[6] = s6;
  out[7] = s7;
  return out;
}
