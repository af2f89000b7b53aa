/**
 * Inverse of a small symmetric positive definite matrix, row-major, by Cholesky's factors of it scaled to a unit diagonal.
 *
 * @returns undefined where it is not positive definite to rounding
 */
export function choleskyInverse(matrix: Float64Array, n: number): Float64Array | undefined {
  const scale = Float64Array.from({ length: n }, (_, i) => 1 / Math.sqrt(matrix[i * n + i]!));
  const L = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]! * scale[i]! * scale[j]!;
      for (let k = 0; k < j; k++) sum -= L[i * n + k]! * L[j * n + k]!;
      if (i !== j) L[i * n + j] = sum / L[j * n + j]!;
      else if (sum > 1e-14) L[i * n + i] = Math.sqrt(sum);
      else return undefined;
    }
  const out = new Float64Array(n * n);
  for (let c = 0; c < n; c++) {
    const x = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      let sum = i === c ? 1 : 0;
      for (let k = 0; k < i; k++) sum -= L[i * n + k]! * x[k]!;
      x[i] = sum / L[i * n + i]!;
    }
    for (let i = n - 1; i >= 0; i--) {
      let sum = x[i]!;
      for (let k = i + 1; k < n; k++) sum -= L[k * n + i]! * x[k]!;
      x[i] = sum / L[i * n + i]!;
    }
    for (let i = 0; i < n; i++) out[i * n + c] = x[i]! * scale[i]! * scale[c]!;
  }
  return out;
}
