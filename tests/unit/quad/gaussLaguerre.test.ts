import { expect, test } from "vitest";
import { gaussLaguerre } from "../../../engine/quad/gaussLaguerre.ts";

test("exact for every power up to 2n − 1: ∫ e^{−x} x^p dx = p!", () => {
  for (const n of [1, 2, 3, 5, 8, 12, 24]) {
    const { node, weight } = gaussLaguerre(n);
    let factorial = 1;
    for (let p = 0; p < 2 * n; p++) {
      if (p > 0) factorial *= p;
      const found = weight.reduce((sum, w, i) => sum + w * node[i]! ** p, 0);
      expect(Math.abs(found / factorial - 1), `n = ${n}, p = ${p}`).toBeLessThan(1e-12);
    }
  }
});

test("nodes ascend from above zero, weights are positive, rules are kept, other sizes are refused", () => {
  const { node, weight } = gaussLaguerre(24);
  node.forEach((x, i) => {
    expect(x).toBeGreaterThan(i === 0 ? 0 : node[i - 1]!);
  });
  expect(weight.every((w) => w > 0)).toBe(true);
  expect(gaussLaguerre(24)).toBe(gaussLaguerre(24));
  for (const n of [0, 25, 1.5, Number.NaN]) expect(() => gaussLaguerre(n)).toThrow(RangeError);
});

test("the two-point rule: 2 ∓ √2 and (2 ± √2)/4, closed form", () => {
  const { node, weight } = gaussLaguerre(2);
  expect(node[0]).toBeCloseTo(2 - Math.SQRT2, 14);
  expect(weight[0]).toBeCloseTo((2 + Math.SQRT2) / 4, 14);
});
