/**
 * Coefficients x = Σ_p columns_p · weight_p.
 *
 * @param columns P columns of 2·N
 * @param weight  2·P
 * @returns 2·N
 */
export function combineStates(columns: Float64Array, weight: Float64Array, N: number): Float64Array {
  const out = new Float64Array(2 * N);
  for (let p = 0; p < weight.length / 2; p++) {
    const wr = weight[2 * p]!;
    const wi = weight[2 * p + 1]!;
    for (let n = 0; n < N; n++) {
      const xr = columns[2 * (p * N + n)]!;
      const xi = columns[2 * (p * N + n) + 1]!;
      out[2 * n]! += wr * xr - wi * xi;
      out[2 * n + 1]! += wr * xi + wi * xr;
    }
  }
  return out;
}
