import { expect, test } from "vitest";
import { parallelStatic } from "../../engine/kernel/parallelStatic.ts";

/** Brute force by the midpoint rule with many points; ρ is large enough for it to settle. */
function brute(l1: number, l2: number, offset: number, rho: number, n = 1200) {
  const m = [0, 0, 0, 0];
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const u = (i + 0.5) / n;
      const v = (j + 0.5) / n;
      const x = u * l1 - offset - v * l2;
      const g = (l1 * l2) / (n * n * Math.sqrt(x * x + rho * rho));
      m[0]! += g;
      m[1]! += u * g;
      m[2]! += v * g;
      m[3]! += u * v * g;
    }
  return m;
}

test.each([
  [1, 1, 0, 0.05],
  [1, 0.7, 1, 0.03],
  [0.4, 1.3, -0.9, 0.2],
  [1, 1, 3.5, 0.1],
])("closed form of ∫∫ 1/R against brute force: lengths %f and %f, offset %f, distance %f", (l1, l2, offset, rho) => {
  const got = parallelStatic(new Float64Array(4), l1, l2, offset, rho);
  brute(l1, l2, offset, rho).forEach((want, i) => {
    expect(Math.abs(got[i]! - want)).toBeLessThan(3e-5 * Math.abs(want));
  });
});

test("self term of a thin segment: 2L(ln(2L/ρ) − 1) to first order in ρ/L", () => {
  const got = parallelStatic(new Float64Array(4), 1, 1, 0, 1e-6)[0]!;
  expect(Math.abs(got - 2 * (Math.log(2e6) - 1))).toBeLessThan(4e-6);
});
