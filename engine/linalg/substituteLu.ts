import type { LuFactors } from "./factorLu.ts";

/**
 * Solves A x = b in place for several right-hand sides, given the factors of `factorLu`.
 *
 * @param x `columns` blocks of 2·n numbers, re and im interleaved: b on entry, the solution on return
 * @returns x; not finite where A is singular
 * @throws RangeError when x is too short
 */
export function substituteLu(x: Float64Array, factors: LuFactors, columns: number): Float64Array {
  const { n, lu, pivot } = factors;
  if (x.length < 2 * n * columns)
    throw new RangeError(`substituteLu: ${x.length} numbers do not hold ${columns} columns of ${n}`);
  for (let c = 0, base = 0; c < columns; c++, base += 2 * n) {
    for (let k = 0; k < n; k++) {
      const p = base + 2 * k;
      const q = base + 2 * pivot[k]!;
      const tRe = x[q]!;
      const tIm = x[q + 1]!;
      x[q] = x[p]!;
      x[q + 1] = x[p + 1]!;
      x[p] = tRe;
      x[p + 1] = tIm;
    }
    for (let i = 1; i < n; i++) subtractRow(x, base, lu, i, 2 * i * n, 0, i);
    for (let i = n - 1; i >= 0; i--) {
      subtractRow(x, base, lu, i, 2 * i * n, i + 1, n);
      const d = 2 * (i * n + i);
      const dRe = lu[d]!;
      const dIm = lu[d + 1]!;
      const s = 1 / (dRe * dRe + dIm * dIm);
      const p = base + 2 * i;
      const yRe = x[p]!;
      const yIm = x[p + 1]!;
      x[p] = (yRe * dRe + yIm * dIm) * s;
      x[p + 1] = (yIm * dRe - yRe * dIm) * s;
    }
  }
  return x;
}

/** x[i] −= Σ row[j] x[j] over from ≤ j < to. */
function subtractRow(
  x: Float64Array,
  base: number,
  lu: Float64Array,
  i: number,
  row: number,
  from: number,
  to: number,
): void {
  let sRe = x[base + 2 * i]!;
  let sIm = x[base + 2 * i + 1]!;
  for (let j = from, q = row + 2 * from, p = base + 2 * from; j < to; j++, q += 2, p += 2) {
    sRe -= lu[q]! * x[p]! - lu[q + 1]! * x[p + 1]!;
    sIm -= lu[q]! * x[p + 1]! + lu[q + 1]! * x[p]!;
  }
  x[base + 2 * i] = sRe;
  x[base + 2 * i + 1] = sIm;
}
