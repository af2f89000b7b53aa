/** Order of the Chebyshev series used for rectangles of kernel values. */
export const ORDER = 8;

/** The zeros of T_ORDER, where the values are taken. Even order: the middle is not among them. */
export const zeros = Float64Array.from({ length: ORDER }, (_, i) => Math.cos((Math.PI * (i + 0.5)) / ORDER));

/** (2 − δ_k0)/ORDER · cos(πk(i + ½)/ORDER): values at the zeros to coefficients. */
const transform = Float64Array.from({ length: ORDER * ORDER }, (_, at) => {
  const k = Math.floor(at / ORDER);
  return ((k === 0 ? 1 : 2) / ORDER) * Math.cos((Math.PI * k * ((at % ORDER) + 0.5)) / ORDER);
});
const line = new Float64Array(8 * ORDER);

/**
 * Turns eight interleaved functions on the ORDER × ORDER grid of zeros into coefficients of T_i(x) T_j(y), in place.
 *
 * @param values 8 · ORDER² numbers, x slow, y next, the eight functions fast
 */
export function toSeries(values: Float64Array): void {
  for (let direction = 0; direction < 2; direction++) {
    const step = direction === 0 ? 8 : 8 * ORDER;
    const other = direction === 0 ? 8 * ORDER : 8;
    for (let l = 0; l < ORDER; l++) {
      line.fill(0);
      for (let k = 0; k < ORDER; k++) {
        for (let i = 0; i < ORDER; i++) {
          const t = transform[k * ORDER + i]!;
          const from = l * other + i * step;
          for (let c = 0; c < 8; c++) line[8 * k + c]! += t * values[from + c]!;
        }
      }
      for (let k = 0; k < ORDER; k++) for (let c = 0; c < 8; c++) values[l * other + k * step + c] = line[8 * k + c]!;
    }
  }
}
