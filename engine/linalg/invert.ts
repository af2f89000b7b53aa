import { solveGeneral } from "./solveGeneral.ts";

/** Inverse of a small complex matrix, n × n row-major interleaved; not finite where it is singular. */
export function invert(matrix: Float64Array, n: number): Float64Array {
  const unit = new Float64Array(2 * n * n);
  for (let i = 0; i < n; i++) unit[2 * (i * n + i)] = 1;
  const columns = solveGeneral(matrix, n, unit, n);
  const out = new Float64Array(2 * n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      out[2 * (i * n + j)] = columns[2 * (j * n + i)]!;
      out[2 * (i * n + j) + 1] = columns[2 * (j * n + i) + 1]!;
    }
  return out;
}
