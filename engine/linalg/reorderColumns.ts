/**
 * Columns of 2·n interleaved numbers with their entries in another order: out[i] = in[order[i]], or back again.
 *
 * @param back true: out[order[i]] = in[i]
 */
export function reorderColumns(columns: Float64Array, n: number, order: Int32Array, back = false): Float64Array {
  const out = new Float64Array(columns.length);
  for (let base = 0; base < columns.length; base += 2 * n)
    for (let i = 0; i < n; i++) {
      const from = base + 2 * (back ? i : order[i]!);
      const to = base + 2 * (back ? order[i]! : i);
      out[to] = columns[from]!;
      out[to + 1] = columns[from + 1]!;
    }
  return out;
}
