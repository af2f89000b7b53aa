import type { SymmetricFactors } from "./factorSymmetric.ts";
import { rowProducts } from "./rowProducts.ts";

const sums = new Float64Array(8);

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
  const zRe = new Float64Array(n * columns);
  const zIm = new Float64Array(n * columns);
  for (let i = 0; i < n * columns; i++) {
    zRe[i] = x[2 * i]!;
    zIm[i] = x[2 * i + 1]!;
  }
  // Two columns at a time, an odd last one by itself.
  for (let c = 0; c < columns; c += 2) forwards(factors, zRe, zIm, c * n, Math.min(c + 1, columns - 1) * n);
  for (let c = 0; c < columns; c++)
    for (let i = 0, q = 0, p = c * n; i < n; i++, q += n + 1, p++) {
      const dRe = re[q]!;
      const dIm = im[q]!;
      const s = 1 / (dRe * dRe + dIm * dIm);
      const yRe = zRe[p]!;
      const yIm = zIm[p]!;
      zRe[p] = (yRe * dRe + yIm * dIm) * s;
      zIm[p] = (yIm * dRe - yRe * dIm) * s;
    }
  for (let c = 0; c < columns; c++) backwards(factors, zRe, zIm, c * n);
  for (let i = 0; i < n * columns; i++) {
    x[2 * i] = zRe[i]!;
    x[2 * i + 1] = zIm[i]!;
  }
  return x;
}

/** L y = b in the columns that begin at `one` and `other`: inner products of two rows at a time with both. */
function forwards(
  { n, re, im }: SymmetricFactors,
  zRe: Float64Array,
  zIm: Float64Array,
  one: number,
  other: number,
): void {
  for (let i = 0; i < n; i += 2) {
    const next = Math.min(i + 1, n - 1);
    rowProducts(sums, re, im, i * n, next * n, zRe, zIm, one, other, i);
    const lRe = re[next * n + i]!;
    const lIm = im[next * n + i]!;
    for (let side = 0; side < (one === other ? 1 : 2); side++) {
      const z = side ? other : one;
      const yRe = zRe[z + i]! - sums[2 * side]!;
      const yIm = zIm[z + i]! - sums[2 * side + 1]!;
      zRe[z + i] = yRe;
      zIm[z + i] = yIm;
      if (next === i) continue;
      zRe[z + next] = zRe[z + next]! - sums[4 + 2 * side]! - (lRe * yRe - lIm * yIm);
      zIm[z + next] = zIm[z + next]! - sums[5 + 2 * side]! - (lRe * yIm + lIm * yRe);
    }
  }
}

/** Lᵀ x = y: row i of L is column i of Lᵀ, so each finished unknown is spread along its row, two rows at a time. */
function backwards({ n, re, im }: SymmetricFactors, zRe: Float64Array, zIm: Float64Array, z: number): void {
  let i = n - 1;
  for (; i > 0; i -= 2) {
    const p = i * n;
    const q = p - n;
    const aRe = zRe[z + i]!;
    const aIm = zIm[z + i]!;
    const bRe = zRe[z + i - 1]! - (re[p + i - 1]! * aRe - im[p + i - 1]! * aIm);
    const bIm = zIm[z + i - 1]! - (re[p + i - 1]! * aIm + im[p + i - 1]! * aRe);
    zRe[z + i - 1] = bRe;
    zIm[z + i - 1] = bIm;
    for (let j = 0; j < i - 1; j++) {
      const pRe = re[p + j]!;
      const pIm = im[p + j]!;
      const qRe = re[q + j]!;
      const qIm = im[q + j]!;
      zRe[z + j] = zRe[z + j]! - (pRe * aRe - pIm * aIm + (qRe * bRe - qIm * bIm));
      zIm[z + j] = zIm[z + j]! - (pRe * aIm + pIm * aRe + (qRe * bIm + qIm * bRe));
    }
  }
}
