import { describe, expect, test } from "vitest";
import { gaussLegendre } from "../../../engine/quad/gaussLegendre.ts";
import { SIN_COS_INTEGRAL_SWITCH, sinCosIntegral } from "../../../engine/special/sinCosIntegral.ts";

/** ∫ f over [0, x] in unit pieces, 24 points each. */
function integrate(f: (t: number) => number, x: number): number {
  const { node, weight } = gaussLegendre(24);
  const pieces = Math.ceil(x);
  let sum = 0;
  for (let p = 0; p < pieces; p++)
    for (let i = 0; i < node.length; i++) sum += weight[i]! * f((x / pieces) * (p + node[i]!));
  return (sum * x) / pieces;
}

describe("sinCosIntegral", () => {
  test("agrees with quadrature of the definitions on both sides of the switch", () => {
    const near = SIN_COS_INTEGRAL_SWITCH;
    for (const x of [1e-3, 0.3, 1, 2.5, near - 1e-7, near, near + 1e-7, 5, 9.3, 20, 60]) {
      const { si, ci } = sinCosIntegral(x);
      expect(Math.abs(si - integrate((t) => Math.sin(t) / t, x)), `Si(${x})`).toBeLessThan(3e-15);
      const cin = integrate((t) => (2 * Math.sin(t / 2) ** 2) / t, x);
      expect(Math.abs(ci - (0.577_215_664_901_532_9 + Math.log(x) - cin)), `Ci(${x})`).toBeLessThan(4e-15);
    }
  });

  test("limits, and arguments it does not know", () => {
    expect(sinCosIntegral(0)).toEqual({ si: 0, ci: Number.NEGATIVE_INFINITY });
    const far = sinCosIntegral(1e6);
    expect(far.si).toBeCloseTo(Math.PI / 2 - Math.cos(1e6) / 1e6, 11);
    expect(sinCosIntegral(-1).si).toBeNaN();
    expect(sinCosIntegral(Number.NaN).ci).toBeNaN();
  });
});
