import { describe, expect, test } from "vitest";
import { halfSpaceOf } from "../../engine/kernel/halfSpace/HalfSpace.ts";
import { reflected, transmitted } from "../../engine/kernel/halfSpace/sommerfeld.ts";
import fixture from "../fixtures/sommerfeldPoints.json";

/**
 * Values and their source: see the fixture's "definitions" (25-digit quadrature along the real axis, by other means than
 * the deformed path used here). Required 1e-6; held to 1e-11, the last of which is the fixture's own rounding.
 */
const allowed = 1e-11;

const out = new Float64Array(9);
const difference = (k: number, value: readonly number[]) => {
  const size = Math.hypot(value[0]!, value[1]!);
  return Math.hypot(out[2 * k]! - value[0]!, out[2 * k + 1]! - value[1]!) / (size || 1);
};

describe("reflected", () => {
  test.each(fixture.reflected)("f $f_Hz Hz, soil $eps_r / $sigma, rho $rho m, zeta $zeta m", (p) => {
    reflected(out, halfSpaceOf(p.f_Hz, p.eps_r, p.sigma), p.rho, p.zeta);
    const worst = Math.max(difference(0, p.I1), difference(1, p.I2), difference(2, p.I3), difference(3, p.I4));
    expect(worst).toBeLessThan(allowed);
  });
});

describe("transmitted", () => {
  test.each(fixture.transmitted)(
    "f $f_Hz Hz, soil $eps_r / $sigma, rho $rho m, height $z_air m, depth $depth m",
    (p) => {
      transmitted(out, halfSpaceOf(p.f_Hz, p.eps_r, p.sigma), p.rho, p.z_air, p.depth);
      expect(Math.max(difference(0, p.T1), difference(1, p.T2), difference(2, p.T3))).toBeLessThan(allowed);
    },
  );
});

test("the comparison can fail: a soil a millionth wetter is told apart", () => {
  const p = fixture.reflected[0]!;
  reflected(out, halfSpaceOf(p.f_Hz, p.eps_r * (1 + 1e-6), p.sigma), p.rho, p.zeta);
  expect(difference(1, p.I2)).toBeGreaterThan(100 * allowed);
});
