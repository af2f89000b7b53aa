/**
 * Moments of 1/R between two parallel segments, in closed form.
 *
 *   m[pq] = ∫₀^L1 ∫₀^L2 u^p u'^q / √((s − offset − s')² + ρ²) ds' ds,   u = s/L1, u' = s'/L2, p, q ∈ {0, 1}
 *
 * The four antiderivatives of 1/√(x² + ρ²), with A = asinh(x/ρ) and R = √(x² + ρ²):
 *   f1 = A,  f2 = xA − R,  f3 = (x²/2 − ρ²/4)A − ¾xR,  f4 = (x³/6 − ρ²x/4)A − (11/36)R³ + (5/12)ρ²R
 * turn the double integral into differences at the four pairs of ends.
 *
 * Accuracy: the differences cancel as (distance/length)⁴ · 1e-16; used below a distance of five lengths the result
 * keeps ten digits. Farther off quadrature is both cheaper and better.
 *
 * @param out     4 numbers, written: m00, m10, m01, m11 [m]
 * @param offset  start of the second segment minus start of the first, along the common direction [m]
 * @param rho     distance between the two lines, > 0 [m]
 */
export function parallelStatic(
  out: Float64Array,
  length1: number,
  length2: number,
  offset: number,
  rho: number,
): Float64Array {
  const r2 = rho * rho;
  let m00 = 0;
  let n10 = 0;
  let n01 = 0;
  let n11 = 0;
  // Corners: x = s − offset − s' at (s, s') = (0, 0), (L1, 0), (0, L2), (L1, L2).
  for (let c = 0; c < 4; c++) {
    const s = c & 1 ? length1 : 0;
    const t = c & 2 ? length2 : 0;
    const x = s - offset - t;
    const a = Math.abs(x);
    const R = Math.sqrt(x * x + r2);
    // asinh through log1p-free form: |x| is never tiny against ρ where digits matter, since x enters multiplied.
    const A = x < 0 ? -Math.log((a + R) / rho) : Math.log((a + R) / rho);
    const f2 = x * A - R;
    const f3 = (0.5 * x * x - 0.25 * r2) * A - 0.75 * x * R;
    const f4 = (x * x * x * (1 / 6) - 0.25 * r2 * x) * A - (11 / 36) * R * R * R + (5 / 12) * r2 * R;
    const sign = c === 0 || c === 3 ? -1 : 1;
    m00 += sign * f2;
    n10 += sign * (s * f2 - f3);
    n01 += sign * (t * f2 + f3);
    n11 += sign * (s * (t * f2 + f3) - (t * f3 + f4));
  }
  out[0] = m00;
  out[1] = n10 / length1;
  out[2] = n01 / length2;
  out[3] = n11 / (length1 * length2);
  return out;
}
