/**
 * How well x solves A x = b: the largest over the columns of ‖A x − b‖ / (‖A‖ ‖x‖), Frobenius norm of A and 2-norms.
 * Zero right-hand sides solved by zero count as exact. NaN or infinity in x comes back as NaN or infinity.
 *
 * @param matrix 2·n·n numbers, row-major, re and im interleaved
 * @param x, rhs `columns` blocks of 2·n numbers
 */
export function measureResidual(
  matrix: Float64Array,
  n: number,
  x: Float64Array,
  rhs: Float64Array,
  columns: number,
): number {
  let normRe = 0;
  let normIm = 0;
  for (let q = 0; q < 2 * n * n; q += 2) {
    normRe += matrix[q]! * matrix[q]!;
    normIm += matrix[q + 1]! * matrix[q + 1]!;
  }
  const norm = normRe + normIm;
  let worst = 0;
  for (let c = 0, base = 0; c < columns; c++, base += 2 * n) {
    let miss = 0;
    let size = 0;
    for (let i = 0; i < n; i++) {
      let sRe = -rhs[base + 2 * i]!;
      let sIm = -rhs[base + 2 * i + 1]!;
      for (let j = 0, q = 2 * i * n, p = base; j < n; j++, q += 2, p += 2) {
        sRe += matrix[q]! * x[p]! - matrix[q + 1]! * x[p + 1]!;
        sIm += matrix[q]! * x[p + 1]! + matrix[q + 1]! * x[p]!;
      }
      miss += sRe * sRe + sIm * sIm;
      size += x[base + 2 * i]! * x[base + 2 * i]! + x[base + 2 * i + 1]! * x[base + 2 * i + 1]!;
    }
    const residual = miss === 0 ? 0 : Math.sqrt(miss / (norm * size));
    // Written so that NaN is kept, not lost in a comparison.
    if (!(residual <= worst)) worst = residual;
    if (Number.isNaN(worst)) return worst;
  }
  return worst;
}
