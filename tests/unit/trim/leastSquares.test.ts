import { expect, test } from "vitest";
import { choleskyInverse } from "../../../engine/trim/fit/choleskyInverse.ts";
import { leastSquares } from "../../../engine/trim/fit/leastSquares.ts";

const free = (n: number) => ({
  least: new Array<number>(n).fill(Number.NEGATIVE_INFINITY),
  most: new Array<number>(n).fill(Number.POSITIVE_INFINITY),
});

/**
 * NIST Statistical Reference Datasets, nonlinear regression, "Misra1a" (D. Misra 1978): data and certified values from
 * memory; that the sum of squares below comes out to ten figures says they were remembered right.
 */
const misra1a = {
  y: [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78],
  x: [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760],
  b: [2.3894212918e2, 5.5015643181e-4],
  error: [2.7070075241, 7.2668688436e-6],
  sumOfSquares: 1.2455138894e-1,
};

test.each([
  [500, 1e-4],
  [250, 5e-4],
])("y = b₁(1 − exp(−b₂x)) from the published start %d, %d to the certified values", (...start) => {
  const found = leastSquares({
    residuals: (b) => Float64Array.from(misra1a.x, (x, i) => b[0]! * (1 - Math.exp(-b[1]! * x)) - misra1a.y[i]!),
    start,
    scale: [1, 1e-6],
    ...free(2),
  });
  expect(found.hasConverged).toBe(true);
  // Central differences over 1e-4 of the scales: J to about 1e-8, and the minimum is flat.
  expect(Math.abs(found.sumOfSquares / misra1a.sumOfSquares - 1)).toBeLessThan(1e-9);
  const variance = found.sumOfSquares / (misra1a.x.length - 2);
  misra1a.b.forEach((b, i) => {
    expect(Math.abs(found.parameters[i]! / b - 1)).toBeLessThan(1e-6);
    expect(Math.abs(Math.sqrt(variance * found.covariance[3 * i]!) / misra1a.error[i]! - 1)).toBeLessThan(1e-5);
  });
});

test("a straight line: the closed form, value and covariance", () => {
  const x = [0, 1, 2, 3, 4];
  const y = [1, 3, 2, 5, 4];
  const found = leastSquares({
    residuals: (p) => Float64Array.from(x, (at, i) => p[0]! + p[1]! * at - y[i]!),
    start: [0, 0],
    scale: [1, 1],
    ...free(2),
  });
  // Slope Sxy/Sxx = 8/10, through the middle (2, 3); variances 1/n + x̄²/Sxx and 1/Sxx.
  expect(found.parameters[1]).toBeCloseTo(0.8, 9);
  expect(found.parameters[0]).toBeCloseTo(1.4, 9);
  expect(found.covariance[3]).toBeCloseTo(0.1, 9);
  expect(found.covariance[0]).toBeCloseTo(0.6, 9);
});

test("bounds hold; what does not matter leaves an infinite covariance", () => {
  const one = leastSquares({
    residuals: (p) => Float64Array.of(p[0]! - 5),
    start: [0],
    scale: [1],
    least: [-1],
    most: [2],
  });
  expect(one.parameters[0]).toBe(2);
  const two = leastSquares({
    residuals: (p) => Float64Array.of(p[0]! + p[1]! - 1),
    start: [0, 0],
    scale: [1, 1],
    ...free(2),
  });
  expect(two.parameters[0]! + two.parameters[1]!).toBeCloseTo(1, 6);
  expect(two.covariance[0]).toBe(Number.POSITIVE_INFINITY);
});

test("two that stand for one another, one of them held by a bound: the other takes up the rest at once", () => {
  const found = leastSquares({
    residuals: (p) => Float64Array.of(1e3 * (p[0]! + p[1]! - 5), p[1]!, 0.01 * p[0]!),
    start: [0, 0],
    scale: [1, 1],
    least: [-1, -100],
    most: [1, 100],
  });
  // With p₀ = 1 what is left is least at p₁ = 4·10⁶/(10⁶ + 1).
  expect(found.parameters[0]).toBe(1);
  expect(found.parameters[1]).toBeCloseTo(4e6 / (1e6 + 1), 8);
  expect(found.hasConverged).toBe(true);
});

test("lists of different length are a mistake of the caller's", () => {
  expect(() => leastSquares({ residuals: () => new Float64Array(1), start: [0, 0], scale: [1], ...free(2) })).toThrow(
    RangeError,
  );
});

test("inverse of a small symmetric matrix, badly scaled; none where it is not positive definite", () => {
  const m = Float64Array.of(4e6, 1200, 2, 1200, 9, 0.01, 2, 0.01, 1e-4);
  const inverse = choleskyInverse(m, 3)!;
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) {
      let sum = 0;
      for (let k = 0; k < 3; k++) sum += m[3 * i + k]! * inverse[3 * k + j]!;
      expect(sum).toBeCloseTo(i === j ? 1 : 0, 7);
    }
  expect(choleskyInverse(Float64Array.of(1, 2, 2, 1), 2)).toBeUndefined();
});
