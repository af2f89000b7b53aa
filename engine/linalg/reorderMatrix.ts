/** A matrix of 2·n·n interleaved numbers with rows and columns in another order: out[i][j] = in[order[i]][order[j]]. */
export function reorderMatrix(matrix: Float64Array, n: number, order: Int32Array): Float64Array {
  const out = new Float64Array(2 * n * n);
  for (let i = 0, q = 0; i < n; i++) {
    const row = 2 * order[i]! * n;
    for (let j = 0; j < n; j++, q += 2) {
      out[q] = matrix[row + 2 * order[j]!]!;
      out[q + 1] = matrix[row + 2 * order[j]! + 1]!;
    }
  }
  return out;
}
