import { all, type BigNumber, create } from "mathjs";
import { describe, expect, test } from "vitest";
import { BESSEL_RATIO_SWITCH, besselRatio } from "../../../engine/special/besselRatio.ts";

const wide = create(all!, { number: "BigNumber", precision: 64 });

/** z J₀/(2 J₁) at z = (1 − j) q by the power series Σ (jq²/2)ᵐ/(m!)² over Σ (jq²/2)ᵐ/(m!(m + 1)!), 64 digits. */
function bySeries(q: number): { re: number; im: number } {
  const y = wide.bignumber(q).pow(2).div(2);
  const sum = { aRe: wide.bignumber(0), aIm: wide.bignumber(0), bRe: wide.bignumber(0), bIm: wide.bignumber(0) };
  let term: BigNumber = wide.bignumber(1);
  for (let m = 0; m < 120; m++) {
    if (m > 0) term = term.mul(y).div(m * m);
    const signed = m % 4 < 2 ? term : term.neg();
    const lower = signed.div(m + 1);
    if (m % 2 === 0) {
      sum.aRe = sum.aRe.add(signed);
      sum.bRe = sum.bRe.add(lower);
    } else {
      sum.aIm = sum.aIm.add(signed);
      sum.bIm = sum.bIm.add(lower);
    }
  }
  const s = sum.bRe.pow(2).add(sum.bIm.pow(2));
  return {
    re: sum.aRe.mul(sum.bRe).add(sum.aIm.mul(sum.bIm)).div(s).toNumber(),
    im: sum.aIm.mul(sum.bRe).sub(sum.aRe.mul(sum.bIm)).div(s).toNumber(),
  };
}

describe("besselRatio", () => {
  test("agrees with the power series on both sides of the switch", () => {
    const near = BESSEL_RATIO_SWITCH;
    for (const q of [1e-3, 0.1, 0.5, 1, 2, 3.7, 6, 10, 15, near - 1e-6, near, near + 1e-6, 24, 30]) {
      const found = besselRatio(q);
      const truth = bySeries(q);
      const size = Math.sqrt(truth.re ** 2 + truth.im ** 2);
      expect(Math.abs(found.re - truth.re) / size, `re at q = ${q}`).toBeLessThan(1e-14);
      expect(Math.abs(found.im - truth.im) / size, `im at q = ${q}`).toBeLessThan(1e-14);
    }
  });

  test("both limits", () => {
    expect(besselRatio(0)).toEqual({ re: 1, im: 0 });
    const far = besselRatio(1e4);
    expect(far.re / 5000).toBeCloseTo(1, 3);
    expect(far.im / 5000).toBeCloseTo(1, 3);
    // The next term of the expansion is the famous quarter: Re → q/2 + 1/4.
    expect(far.re - 5000).toBeCloseTo(0.25, 4);
  });
});
