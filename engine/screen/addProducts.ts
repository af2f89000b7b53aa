/** dz_mn += weight · H_m·H_n for m ≤ n, h as states × (Re Hx, Im Hx, Re Hy, Im Hy). */
export function addProducts(dz: Float64Array, h: Float64Array, states: number, wRe: number, wIm: number): void {
  for (let m = 0; m < states; m++) {
    const xRe = h[4 * m]!;
    const xIm = h[4 * m + 1]!;
    const yRe = h[4 * m + 2]!;
    const yIm = h[4 * m + 3]!;
    for (let n = m; n < states; n++) {
      const uRe = h[4 * n]!;
      const uIm = h[4 * n + 1]!;
      const vRe = h[4 * n + 2]!;
      const vIm = h[4 * n + 3]!;
      const re = xRe * uRe - xIm * uIm + (yRe * vRe - yIm * vIm);
      const im = xRe * uIm + xIm * uRe + (yRe * vIm + yIm * vRe);
      const at = 2 * (m * states + n);
      dz[at] = dz[at]! + wRe * re - wIm * im;
      dz[at + 1] = dz[at + 1]! + wRe * im + wIm * re;
    }
  }
}
