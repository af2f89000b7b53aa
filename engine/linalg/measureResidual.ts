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
  let norm = 0;
  const miss = new Float64Array(columns);
  const size = new Float64Array(columns);
  for (let i = 0; i < n; i++) {
    const row = 2 * i * n;
    let normRe = 0;
    let normIm = 0;
    for (let q = row; q < row + 2 * n; q += 2) {
      normRe += matrix[q]! * matrix[q]!;
      normIm += matrix[q + 1]! * matrix[q + 1]!;
    }
    norm += normRe + normIm;
    for (let c = 0, base = 0; c < columns; c++, base += 2 * n) {
      // The four products apart: none waits for the other.
      let rr = -rhs[base + 2 * i]!;
      let ii = 0;
      let ri = -rhs[base + 2 * i + 1]!;
      let ir = 0;
      for (let q = row, p = base; q < row + 2 * n; q += 2, p += 2) {
        const re = matrix[q]!;
        const im = matrix[q + 1]!;
        const xr = x[p]!;
        const xi = x[p + 1]!;
        rr += re * xr;
        ii += im * xi;
        ri += re * xi;
        ir += im * xr;
      }
      miss[c]! += (rr - ii) * (rr - ii) + (ri + ir) * (ri + ir);
      size[c]! += x[base + 2 * i]! * x[base + 2 * i]! + x[base + 2 * i + 1]! * x[base + 2 * i + 1]!;
    }
  }
  let worst = 0;
  for (let c = 0; c < columns; c++) {
    const residual = miss[c] === 0 ? 0 : Math.sqrt(miss[c]! / (norm * size[c]!));
    // Written so that NaN is kept, not lost in a comparison.
    if (!(residual <= worst)) worst = residual;
    if (Number.isNaN(worst)) return worst;
  }
  return worst;
}
