/**
 * Coefficients of the cubic spline through n values at 0, 1, … n − 1 in the basis of uniform cubic B-splines:
 *
 *   f(i + t) = Σ_{m=0..3} B_m(t) c_{i+m},   (c_i + 4 c_{i+1} + c_{i+2})/6 = f_i,
 *   6B = (1 − t)³, 3t³ − 6t² + 4, −3t³ + 3t² + 3t + 1, t³
 *
 * with "not a knot" ends (fourth difference of c zero at the second and the last but one point), so that the error is
 * h⁴ f⁗/384 in the middle of a cell and of the same order at the ends.
 *
 * @param c       n + 2 coefficients, written from `at` on, `stride` apart
 * @param f       n values, from `from` on, `step` apart
 * @param work    at least 2n numbers of room
 * @throws RangeError when n < 6
 */
export function splineCoefficients(
  c: Float64Array,
  at: number,
  stride: number,
  f: Float64Array,
  from: number,
  step: number,
  n: number,
  work: Float64Array,
): void {
  if (n < 6) throw new RangeError(`splineCoefficients: ${n} values are too few`);
  const value = (i: number) => f[from + i * step]!;
  // The end condition gives the second coefficient from the left (and right) at once.
  const left = (8 * value(1) - value(0) - value(2)) / 6;
  const right = (8 * value(n - 2) - value(n - 1) - value(n - 3)) / 6;
  c[at + 2 * stride] = left;
  c[at + (n - 1) * stride] = right;
  // c₃ … c_{n−2} by elimination of the tridiagonal system 1 4 1.
  const m = n - 4;
  for (let i = 0; i < m; i++) {
    let rhs = 6 * value(i + 2);
    if (i === 0) rhs -= left;
    if (i === m - 1) rhs -= right;
    const p = 1 / (4 - (i > 0 ? work[2 * i - 2]! : 0));
    work[2 * i] = p;
    work[2 * i + 1] = (rhs - (i > 0 ? work[2 * i - 1]! : 0)) * p;
  }
  for (let i = m - 1; i >= 0; i--)
    c[at + (i + 3) * stride] = work[2 * i + 1]! - (i < m - 1 ? work[2 * i]! * c[at + (i + 4) * stride]! : 0);
  const known = (i: number) => c[at + i * stride]!;
  c[at + stride] = 6 * value(1) - 4 * known(2) - known(3);
  c[at] = 6 * value(0) - 4 * known(1) - known(2);
  c[at + n * stride] = 6 * value(n - 2) - 4 * known(n - 1) - known(n - 2);
  c[at + (n + 1) * stride] = 6 * value(n - 1) - 4 * known(n) - known(n - 1);
}
