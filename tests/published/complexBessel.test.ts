import { describe, expect, test } from "vitest";
import { besselJ01 } from "../../engine/special/besselJ01.ts";
import { hankelFirst01 } from "../../engine/special/hankelFirst01.ts";
import { hankelSecond01 } from "../../engine/special/hankelSecond01.ts";

/**
 * M. Abramowitz, I. A. Stegun (eds.), Handbook of Mathematical Functions, NBS AMS 55 (1964), Table 9.1 (J0 to 15, the
 * others to 10 decimals) and Table 9.8 (e^{-x} I, e^{x} K). From memory, confirmed with 25-digit arithmetic.
 */
const table91 = [
  { x: 0.5, j0: 0.938469807240813, j1: 0.2422684577, y0: -0.4445187335, y1: -1.4714723927 },
  { x: 1, j0: 0.765197686557967, j1: 0.4400505857, y0: 0.0882569642, y1: -0.7812128213 },
  { x: 2, j0: 0.223890779141236, j1: 0.5767248078, y0: 0.5103756726, y1: -0.1070324315 },
  { x: 5, j0: -0.177596771314338, j1: -0.3275791376, y0: -0.3085176252, y1: 0.1478631434 },
  { x: 10, j0: -0.245935764451348, j1: 0.0434727462, y0: 0.0556711673, y1: 0.2490154242 },
  { x: 15, j0: -0.014224472826781, j1: 0.2051040386, y0: 0.205464296, y1: 0.021073628 },
] as const;
const ten = 0.5e-10;
const fifteen = 0.5e-15 + 1e-12; // last place plus the stated accuracy

const out = new Float64Array(4);

describe("real arguments, Table 9.1", () => {
  test.each(table91)("x = $x", ({ x, j0, j1, y0, y1 }) => {
    besselJ01(out, x, 0);
    expect(Math.abs(out[0]! - j0)).toBeLessThan(fifteen);
    expect(Math.abs(out[2]! - j1)).toBeLessThan(ten + 1e-12);
    hankelFirst01(out, x, 0);
    expect(Math.abs(out[1]! - y0)).toBeLessThan(ten + 1e-12);
    expect(Math.abs(out[3]! - y1)).toBeLessThan(ten + 2e-12);
    hankelSecond01(out, x, 0);
    expect(Math.abs(out[1]! + y0)).toBeLessThan(ten + 1e-12);
  });
});

describe("imaginary arguments: J(jx) = I(x), H1(jx) from K(x)", () => {
  // x, I0(x), I1(x), K0(x), K1(x)
  test.each([[1, 1.2660658778, 0.565159104, 0.4210244382, 0.6019072302]])("x = %d", (x, i0, i1, k0, k1) => {
    besselJ01(out, 0, x);
    expect(Math.abs(out[0]! - i0)).toBeLessThan(ten + 1e-12);
    expect(Math.abs(out[3]! - i1)).toBeLessThan(ten + 1e-12);
    hankelFirst01(out, 0, x);
    expect(Math.abs(out[1]! + (2 / Math.PI) * k0)).toBeLessThan(ten + 1e-12);
    expect(Math.abs(out[2]! + (2 / Math.PI) * k1)).toBeLessThan(ten + 1e-12);
  });
});

test("the comparison can fail: neighbouring rows differ by far more than the tolerance", () => {
  besselJ01(out, table91[1].x, 0);
  expect(Math.abs(out[0]! - table91[2].j0)).toBeGreaterThan(1e6 * ten);
});
