/** L and D of A = L D Lᵀ, the unit diagonal of L not stored: D on the diagonal, L below it. */
export interface SymmetricFactors {
  readonly n: number;
  /** Real and imaginary parts apart: the inner loop then loads two plain streams. Row-major, n·n each. */
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * Factors a complex symmetric matrix (A = Aᵀ, no conjugate) as L D Lᵀ without pivoting.
 *
 * Two pivot columns are finished at a time, then the rows below are updated in pairs: each pass of the inner loop reads
 * two D-scaled pivot entries and updates two rows (32 operations for 8 loads and 4 stores), which is what a scripted
 * loop can keep in registers. Only the lower triangle is read; the entry just right of the diagonal is scratch.
 *
 * Without pivoting a zero or tiny leading minor spoils the factors: the caller must check the residual, as
 * `solveSymmetric` does.
 *
 * @param matrix 2·n·n numbers, row-major, re and im interleaved; not changed
 * @returns factors; operations 4/3 n³
 * @throws RangeError when the array is too short for n
 */
export function factorSymmetric(matrix: Float64Array, n: number): SymmetricFactors {
  if (matrix.length < 2 * n * n) throw new RangeError(`factorSymmetric: ${matrix.length} numbers do not hold n = ${n}`);
  const re = new Float64Array(n * n);
  const im = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0, q = i * n; j <= i; j++, q++) {
      re[q] = matrix[2 * q]!;
      im[q] = matrix[2 * q + 1]!;
    }

  // Pivot columns times D: the row side of the rank-two update, contiguous.
  const uRe = new Float64Array(n);
  const uIm = new Float64Array(n);
  const vRe = new Float64Array(n);
  const vIm = new Float64Array(n);

  for (let k = 0; k + 1 < n; k += 2) {
    // The 2×2 corner: d0, then l = a10/d0 and d1 = a11 − l·a10.
    const p = k * n + k;
    const s0 = 1 / (re[p]! * re[p]! + im[p]! * im[p]!);
    const i0Re = re[p]! * s0;
    const i0Im = -im[p]! * s0;
    const aRe = re[p + n]!;
    const aIm = im[p + n]!;
    const lRe = aRe * i0Re - aIm * i0Im;
    const lIm = aRe * i0Im + aIm * i0Re;
    re[p + n] = lRe;
    im[p + n] = lIm;
    const d1Re = re[p + n + 1]! - (lRe * aRe - lIm * aIm);
    const d1Im = im[p + n + 1]! - (lRe * aIm + lIm * aRe);
    re[p + n + 1] = d1Re;
    im[p + n + 1] = d1Im;
    const s1 = 1 / (d1Re * d1Re + d1Im * d1Im);
    const i1Re = d1Re * s1;
    const i1Im = -d1Im * s1;

    // The two columns below it: keep them D-scaled in scratch, leave L in place.
    for (let i = k + 2, q = i * n + k; i < n; i++, q += n) {
      const bRe = re[q]!;
      const bIm = im[q]!;
      const cRe = re[q + 1]! - (bRe * lRe - bIm * lIm);
      const cIm = im[q + 1]! - (bRe * lIm + bIm * lRe);
      uRe[i] = bRe;
      uIm[i] = bIm;
      vRe[i] = cRe;
      vIm[i] = cIm;
      re[q] = bRe * i0Re - bIm * i0Im;
      im[q] = bRe * i0Im + bIm * i0Re;
      re[q + 1] = cRe * i1Re - cIm * i1Im;
      im[q + 1] = cRe * i1Im + cIm * i1Re;
    }
    updatePairs(re, im, n, k, uRe, uIm, vRe, vIm);
  }
  return { n, re, im };
}

/** Subtracts the two pivots' part from every pair of rows below them. */
function updatePairs(
  re: Float64Array,
  im: Float64Array,
  n: number,
  k: number,
  uRe: Float64Array,
  uIm: Float64Array,
  vRe: Float64Array,
  vIm: Float64Array,
): void {
  for (let i = k + 2; i < n; i += 2) {
    const a = i * n + k;
    const aRe = re[a]!;
    const aIm = im[a]!;
    const bRe = re[a + 1]!;
    const bIm = im[a + 1]!;
    if (i + 1 === n) {
      // An odd row left over.
      for (let j = k + 2, q = a + 2; j <= i; j++, q++) {
        re[q] = re[q]! - (aRe * uRe[j]! - aIm * uIm[j]! + (bRe * vRe[j]! - bIm * vIm[j]!));
        im[q] = im[q]! - (aRe * uIm[j]! + aIm * uRe[j]! + (bRe * vIm[j]! + bIm * vRe[j]!));
      }
      return;
    }
    const cRe = re[a + n]!;
    const cIm = im[a + n]!;
    const dRe = re[a + n + 1]!;
    const dIm = im[a + n + 1]!;
    // Row i is updated one entry past its diagonal so that both rows share one loop.
    for (let j = k + 2, q = a + 2, r = q + n; j <= i + 1; j++, q++, r++) {
      const pRe = uRe[j]!;
      const pIm = uIm[j]!;
      const qRe = vRe[j]!;
      const qIm = vIm[j]!;
      re[q] = re[q]! - (aRe * pRe - aIm * pIm + (bRe * qRe - bIm * qIm));
      im[q] = im[q]! - (aRe * pIm + aIm * pRe + (bRe * qIm + bIm * qRe));
      re[r] = re[r]! - (cRe * pRe - cIm * pIm + (dRe * qRe - dIm * qIm));
      im[r] = im[r]! - (cRe * pIm + cIm * pRe + (dRe * qIm + dIm * qRe));
    }
  }
}
