import { factorSymmetric, type SymmetricFactors } from "./factorSymmetric.ts";

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
  // Rows of L₂₁ D₁, by substitution in L₁₁ …
  const yRe = new Float64Array(left * kept);
  const yIm = new Float64Array(left * kept);
  for (let r = 0; r < left; r++) {
    const row = r * kept;
    const q = 2 * (kept + r) * n;
    for (let j = 0; j < kept; j++) {
      let sRe = matrix[q + 2 * j]!;
      let sIm = matrix[q + 2 * j + 1]!;
      for (let t = 0, l = j * n, y = row; t < j; t++, l++, y++) {
        sRe -= re[l]! * yRe[y]! - im[l]! * yIm[y]!;
        sIm -= re[l]! * yIm[y]! + im[l]! * yRe[y]!;
      }
      yRe[row + j] = sRe;
      yIm[row + j] = sIm;
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
  for (let r = 0; r < left; r++)
    for (let c = 0; c <= r; c++) {
      let sRe = matrix[2 * ((kept + r) * n + kept + c)]!;
      let sIm = matrix[2 * ((kept + r) * n + kept + c) + 1]!;
      for (let t = 0, l = (kept + r) * n, y = c * kept; t < kept; t++, l++, y++) {
        sRe -= re[l]! * yRe[y]! - im[l]! * yIm[y]!;
        sIm -= re[l]! * yIm[y]! + im[l]! * yRe[y]!;
      }
      rest[2 * (r * left + c)] = sRe;
      rest[2 * (r * left + c) + 1] = sIm;
    }
  const own = factorSymmetric(rest, left);
  for (let r = 0; r < left; r++) {
    re.set(own.re.subarray(r * left, r * left + r + 1), (kept + r) * n + kept);
    im.set(own.im.subarray(r * left, r * left + r + 1), (kept + r) * n + kept);
  }
  return { n, re, im };
}
