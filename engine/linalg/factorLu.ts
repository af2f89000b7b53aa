/** P A = L U of a complex matrix: L (unit diagonal, not stored) below, U on and above the diagonal. */
export interface LuFactors {
  readonly n: number;
  /** 2·n·n numbers, row-major, re and im interleaved. */
  readonly lu: Float64Array;
  /** At step k rows k and `pivot[k]` were exchanged. */
  readonly pivot: Int32Array;
}

/**
 * Factors a general complex matrix with partial pivoting (largest |re| + |im| in the column).
 *
 * Slower than `factorSymmetric`, and safe where that one is not. A singular matrix gives factors with a zero on U's
 * diagonal, and solutions that are not finite.
 *
 * @param matrix 2·n·n numbers, row-major, re and im interleaved; not changed
 * @throws RangeError when the array is too short for n
 */
export function factorLu(matrix: Float64Array, n: number): LuFactors {
  if (matrix.length < 2 * n * n) throw new RangeError(`factorLu: ${matrix.length} numbers do not hold n = ${n}`);
  const lu = matrix.slice(0, 2 * n * n);
  const pivot = new Int32Array(n);
  const row = 2 * n;
  for (let k = 0; k < n; k++) {
    // The largest entry of the column comes up.
    let best = k;
    let size = -1;
    for (let i = k, q = k * row + 2 * k; i < n; i++, q += row) {
      const s = Math.abs(lu[q]!) + Math.abs(lu[q + 1]!);
      if (s > size) {
        size = s;
        best = i;
      }
    }
    pivot[k] = best;
    if (best !== k)
      for (let j = 0, p = k * row, q = best * row; j < row; j++, p++, q++) {
        const t = lu[p]!;
        lu[p] = lu[q]!;
        lu[q] = t;
      }

    // Eliminate below.
    const p = k * row + 2 * k;
    const s = 1 / (lu[p]! * lu[p]! + lu[p + 1]! * lu[p + 1]!);
    const iRe = lu[p]! * s;
    const iIm = -lu[p + 1]! * s;
    for (let i = k + 1; i < n; i++) {
      const q = i * row + 2 * k;
      const mRe = lu[q]! * iRe - lu[q + 1]! * iIm;
      const mIm = lu[q]! * iIm + lu[q + 1]! * iRe;
      lu[q] = mRe;
      lu[q + 1] = mIm;
      for (let j = 2, end = row - 2 * k; j < end; j += 2) {
        const uRe = lu[p + j]!;
        const uIm = lu[p + j + 1]!;
        lu[q + j] = lu[q + j]! - (mRe * uRe - mIm * uIm);
        lu[q + j + 1] = lu[q + j + 1]! - (mRe * uIm + mIm * uRe);
      }
    }
  }
  return { n, lu, pivot };
}
