import type { SymmetricFactors } from "./factorSymmetric.ts";

/**
 * Solves L D Lᵀ x = b in place for several right-hand sides, given the factors of `factorSymmetric`.
 *
 * @param x `columns` blocks of 2·n numbers, re and im interleaved: b on entry, the solution on return
 * @returns x
 * @throws RangeError when x is too short
 */
export function substituteSymmetric(x: Float64Array, factors: SymmetricFactors, columns: number): Float64Array {
  const { n, re, im } = factors;
  if (x.length < 2 * n * columns)
    throw new RangeError(`substituteSymmetric: ${x.length} numbers do not hold ${columns} columns of ${n}`);
  for (let c = 0, base = 0; c < columns; c++, base += 2 * n) {
    // L y = b: row-wise inner products.
    for (let i = 1; i < n; i++) {
      let sRe = x[base + 2 * i]!;
      let sIm = x[base + 2 * i + 1]!;
      for (let j = 0, q = i * n, p = base; j < i; j++, q++, p += 2) {
        sRe -= re[q]! * x[p]! - im[q]! * x[p + 1]!;
        sIm -= re[q]! * x[p + 1]! + im[q]! * x[p]!;
      }
      x[base + 2 * i] = sRe;
      x[base + 2 * i + 1] = sIm;
    }
    // D.
    for (let i = 0, q = 0, p = base; i < n; i++, q += n + 1, p += 2) {
      const dRe = re[q]!;
      const dIm = im[q]!;
      const s = 1 / (dRe * dRe + dIm * dIm);
      const yRe = x[p]!;
      const yIm = x[p + 1]!;
      x[p] = (yRe * dRe + yIm * dIm) * s;
      x[p + 1] = (yIm * dRe - yRe * dIm) * s;
    }
    // Lᵀ x = y: row i of L is column i of Lᵀ, so spread each finished unknown along its row.
    for (let i = n - 1; i > 0; i--) {
      const tRe = x[base + 2 * i]!;
      const tIm = x[base + 2 * i + 1]!;
      for (let j = 0, q = i * n, p = base; j < i; j++, q++, p += 2) {
        x[p] = x[p]! - (re[q]! * tRe - im[q]! * tIm);
        x[p + 1] = x[p + 1]! - (re[q]! * tIm + im[q]! * tRe);
      }
    }
  }
  return x;
}
