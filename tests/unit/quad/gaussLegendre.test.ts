import { describe, expect, test } from "vitest";
import { gaussLegendre } from "../../../engine/quad/gaussLegendre.ts";

const sizes = [1, 2, 3, 4, 5, 8, 16, 33, 64, 101, 200];

describe("gaussLegendre", () => {
  test("weights are positive and sum to one; nodes ascend inside (0, 1) and mirror about one half", () => {
    for (const n of sizes) {
      const { node, weight } = gaussLegendre(n);
      let sum = 0;
      for (let i = 0; i < n; i++) {
        sum += weight[i]!;
        expect(weight[i]).toBeGreaterThan(0);
        expect(weight[i]).toBe(weight[n - 1 - i]);
        expect(Math.abs(node[i]! + node[n - 1 - i]! - 1)).toBeLessThan(2e-16);
        expect(node[i]).toBeGreaterThan(i === 0 ? 0 : node[i - 1]!);
      }
      expect(node[n - 1]).toBeLessThan(1);
      expect(Math.abs(sum - 1), `n = ${n}`).toBeLessThan(2e-15);
    }
  });

  test("exact for every power up to 2n − 1, and not for 2n", () => {
    for (const n of sizes) {
      const { node, weight } = gaussLegendre(n);
      const power = (p: number) => weight.reduce((sum, w, i) => sum + w * node[i]! ** p, 0);
      for (let p = 0; p < 2 * n; p++)
        expect(Math.abs(power(p) * (p + 1) - 1), `n = ${n}, p = ${p}`).toBeLessThan(4e-13);
    }
  });

  test("the power 2n is missed by (n!)⁴/((2n + 1) (2n)!²), as it must be", () => {
    for (const n of sizes.filter((size) => size <= 8)) {
      const { node, weight } = gaussLegendre(n);
      const found = weight.reduce((sum, w, i) => sum + w * node[i]! ** (2 * n), 0);
      let miss = 1 / (2 * n + 1);
      for (let i = 1; i <= n; i++) miss *= (i / (n + i)) ** 2;
      expect(miss).toBeGreaterThan(1e-12);
      expect(1 / (2 * n + 1) - found).toBeCloseTo(miss, 13);
    }
  });

  test("the tabulated three-point rule", () => {
    // √(3/5) and 5/9, 8/9 on [−1, 1]: closed form.
    const { node, weight } = gaussLegendre(3);
    expect(node[2]).toBeCloseTo(0.5 + 0.5 * Math.sqrt(0.6), 15);
    expect(weight[0]).toBeCloseTo(5 / 18, 15);
    expect(weight[1]).toBeCloseTo(4 / 9, 15);
  });

  test("kept between calls; sizes it does not offer are refused", () => {
    expect(gaussLegendre(12)).toBe(gaussLegendre(12));
    for (const n of [0, -1, 2.5, 201, Number.NaN]) expect(() => gaussLegendre(n)).toThrow(RangeError);
  });
});
