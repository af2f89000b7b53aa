import { expect, test } from "vitest";
import { besselRatio } from "../../engine/special/besselRatio.ts";

/**
 * Resistance of a round wire at alternating current over direct current, against x = a √(ω μ σ) = √2 a/δ.
 * Source: the skin-effect table of E. B. Rosa and F. W. Grover, Bulletin of the Bureau of Standards 8, 1912 (reprinted in
 * NBS Circular 74); the five decimals are from memory, the page was not seen. Tolerance one unit of the last place, not
 * half: 64-digit power series give 2.042725 at x = 5 and 3.798576 at x = 10, so the table (or the memory of it) is not
 * rounded to its last place.
 */
const rows: readonly (readonly [x: number, ratio: number])[] = [
  [1, 1.00519],
  [2, 1.07816],
  [3, 1.31809],
  [4, 1.67787],
  [5, 2.04272],
  [10, 3.79857],
];

test.each(rows)("skin effect at x = %f", (x, ratio) => {
  expect(Math.abs(besselRatio(x / Math.SQRT2).re - ratio)).toBeLessThanOrEqual(1e-5);
});
