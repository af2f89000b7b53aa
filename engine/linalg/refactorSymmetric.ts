import { factorSymmetric, type SymmetricFactors } from "./factorSymmetric.ts";
import { rowProducts } from "./rowProducts.ts";

const sums = new Float64Array(8);

/**
 * Factors a complex symmetric matrix whose first `kept` rows and columns are those of a matrix that was factored before:
 *
 *   A = ⎡A₁₁ A₂₁ᵀ⎤,  L = ⎡L₁₁   ⎤,   L₂₁ D₁ L₁₁ᵀ = A₂₁,  L₂₂ D₂ L₂₂ᵀ = A₂₂ − L₂₁ D₁ L₂₁ᵀ,
 *       ⎣A₂₁ A₂₂ ⎦       ⎣L₂₁ L₂₂⎦
 *
 * with L₁₁ and D₁ taken over. Costs 4 (n − kept) n² operations or fewer, against 4/3 n³ for all.
 *
 * @param before factors of the other matrix, at least `kept` rows of them; their arrays are written into and may not be used
 *   any more where n is the same
 * @throws RangeError when `kept` is no row of both
 */
export function refactorSymmetric(
  matrix: Float64Array,
  n: number,
  before: SymmetricFactors,
  kept: number,
): SymmetricFactors {
  if (!(kept >= 0 && kept <= n && kept <= before.n))
    throw new RangeError(`refactorSymmetric: ${kept} rows are not in ${before.n} and ${n}`);
  const isSame = before.n === n;
  const re = isSame ? before.re : new Float64Array(n * n);
  const im = isSame ? before.im : new Float64Array(n * n);
  if (!isSame)
    for (let i = 0; i < kept; i++) {
      re.set(before.re.subarray(i * before.n, i * before.n + i + 1), i * n);
      im.set(before.im.subarray(i * before.n, i * before.n + i + 1), i * n);
    }

  const left = n - kept;
  // Rows of L₂₁ D₁, by substitution in L₁₁: two rows and two columns at a time, an odd last one as its own partner …
  const yRe = new Float64Array(left * kept);
  const yIm = new Float64Array(left * kept);
  for (let r = 0; r < left; r += 2) {
    const other = Math.min(r + 1, left - 1);
    for (let j = 0; j < kept; j += 2) {
      const next = Math.min(j + 1, kept - 1);
      rowProducts(sums, yRe, yIm, r * kept, other * kept, re, im, j * n, next * n, j);
      for (const half of [0, 1]) {
        const row = half ? other : r;
        const q = 2 * (kept + row) * n;
        const y = row * kept;
        const aRe = matrix[q + 2 * j]! - sums[4 * half]!;
        const aIm = matrix[q + 2 * j + 1]! - sums[4 * half + 1]!;
        yRe[y + j] = aRe;
        yIm[y + j] = aIm;
        if (next === j) continue;
        const lRe = re[next * n + j]!;
        const lIm = im[next * n + j]!;
        yRe[y + next] = matrix[q + 2 * next]! - sums[4 * half + 2]! - (lRe * aRe - lIm * aIm);
        yIm[y + next] = matrix[q + 2 * next + 1]! - sums[4 * half + 3]! - (lRe * aIm + lIm * aRe);
      }
    }
  }
  // … and of L₂₁.
  for (let j = 0; j < kept; j++) {
    const dRe = re[j * n + j]!;
    const dIm = im[j * n + j]!;
    const s = 1 / (dRe * dRe + dIm * dIm);
    for (let r = 0; r < left; r++) {
      const a = yRe[r * kept + j]!;
      const b = yIm[r * kept + j]!;
      re[(kept + r) * n + j] = (a * dRe + b * dIm) * s;
      im[(kept + r) * n + j] = (b * dRe - a * dIm) * s;
    }
  }
  const rest = new Float64Array(2 * left * left);
  for (let r = 0; r < left; r += 2) {
    const other = Math.min(r + 1, left - 1);
    for (let c = 0; c <= other; c += 2) {
      const next = Math.min(c + 1, left - 1);
      rowProducts(sums, re, im, (kept + r) * n, (kept + other) * n, yRe, yIm, c * kept, next * kept, kept);
      for (const half of [0, 1])
        for (const side of [0, 1]) {
          const row = half ? other : r;
          const column = side ? next : c;
          const q = 2 * ((kept + row) * n + kept + column);
          const at = 2 * (row * left + column);
          rest[at] = matrix[q]! - sums[4 * half + 2 * side]!;
          rest[at + 1] = matrix[q + 1]! - sums[4 * half + 2 * side + 1]!;
        }
    }
  }
  const own = factorSymmetric(rest, left);
  for (let r = 0; r < left; r++) {
    re.set(own.re.subarray(r * left, r * left + r + 1), (kept + r) * n + kept);
    im.set(own.im.subarray(r * left, r * left + r + 1), (kept + r) * n + kept);
  }
  return { n, re, im };
}
