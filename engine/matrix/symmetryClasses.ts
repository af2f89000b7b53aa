import type { Symmetry } from "./Symmetry.ts";

/** Port vectors in terms of classes: P columns of 2·N become P columns of 2·count. */
export function toClasses(vectors: Float64Array, P: number, { classOf, weight, count }: Symmetry): Float64Array {
  const N = classOf.length;
  const out = new Float64Array(2 * count * P);
  for (let p = 0; p < P; p++)
    for (let n = 0; n < N; n++) {
      const c = classOf[n]!;
      if (c < 0) continue;
      out[2 * (p * count + c)]! += weight[n]! * vectors[2 * (p * N + n)]!;
      out[2 * (p * count + c) + 1]! += weight[n]! * vectors[2 * (p * N + n) + 1]!;
    }
  return out;
}

/** Coefficients of all basis functions from those of the classes. */
export function fromClasses(solved: Float64Array, P: number, { classOf, weight, count }: Symmetry): Float64Array {
  const N = classOf.length;
  const out = new Float64Array(2 * N * P);
  for (let p = 0; p < P; p++)
    for (let n = 0; n < N; n++) {
      const c = classOf[n]!;
      if (c < 0) continue;
      out[2 * (p * N + n)] = weight[n]! * solved[2 * (p * count + c)]!;
      out[2 * (p * N + n) + 1] = weight[n]! * solved[2 * (p * count + c) + 1]!;
    }
  return out;
}
