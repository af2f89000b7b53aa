import { expect, test } from "vitest";
import { figure, signedFigure, withUnit } from "../../../src/charts/figure.ts";
import { floor_dBi, gainScale, outerRing_dBi, ringLevels } from "../../../src/charts/gainScale.ts";
import { impedanceText } from "../../../src/charts/impedanceText.ts";
import { readCut } from "../../../src/charts/readCut.ts";
import { tracePath, washPath } from "../../../src/charts/tracePath.ts";

test("figures: a true minus, no sign on a zero, a dash for what is not there", () => {
  expect(figure(-6.54, 1)).toBe("−6.5");
  expect(figure(-0.04, 1)).toBe("0.0");
  expect(figure(0, 0)).toBe("0");
  expect(figure(Number.NEGATIVE_INFINITY, 1)).toBe("–");
  expect(figure(Number.NaN, 1)).toBe("–");
  expect(signedFigure(3.84, 1)).toBe("+3.8");
  expect(signedFigure(0.04, 1)).toBe("0.0");
  expect(signedFigure(-0.06, 1)).toBe("−0.1");
  expect(signedFigure(Number.POSITIVE_INFINITY, 1)).toBe("–");
  expect(withUnit("–", "dBi")).toBe("–");
  expect(withUnit("1.0", "dBi")).toBe("1.0 dBi");
});

test("impedances: decimals shrink as the numbers grow, and the sign stands before j", () => {
  expect(impedanceText(31.24, 12.35)).toMatch(/^31\.2 \+ j12\.[34] Ω$/);
  expect(impedanceText(31.2, -12.4)).toBe("31.2 − j12.4 Ω");
  expect(impedanceText(131.2, -0.2)).toBe("131 + j0 Ω");
  expect(impedanceText(Number.NaN, 1)).toBe("–");
});

test("the gain scale: floor in the middle, ring at the rim, beyond it for what is louder, a gap for what is not finite", () => {
  const r = gainScale(6, 150);
  expect(r(6)).toBeCloseTo(150, 12);
  expect(r(floor_dBi(6))).toBe(0);
  expect(r(-100)).toBe(0);
  expect(r(-9)).toBeCloseTo(75, 12);
  expect(r(9)).toBeCloseTo(165, 12);
  expect(r(Number.NEGATIVE_INFINITY)).toBeNaN();
  expect(r(Number.NaN)).toBeNaN();
});

test("the outer ring is a multiple of 6 dB that holds every gain, and rests at 6 dBi for the usual ones", () => {
  expect(outerRing_dBi([])).toBe(6);
  expect(outerRing_dBi([-20, 3.2, Number.NaN, Number.POSITIVE_INFINITY])).toBe(6);
  expect(outerRing_dBi([6.01])).toBe(12);
  expect(outerRing_dBi([12])).toBe(12);
  expect(ringLevels(6)).toEqual([6, 0, -6, -12, -18]);
});

test("a cut is read on its samples exactly, between them in a straight line, and nowhere else", () => {
  const cut = { angle_deg: [0, 1, 2, 3], gain_dBi: [Number.NEGATIVE_INFINITY, -10, -4, Number.NaN] };
  expect(readCut(cut, 1)).toBe(-10);
  expect(readCut(cut, 1.25)).toBeCloseTo(-8.5, 12);
  expect(readCut(cut, 0)).toBe(Number.NEGATIVE_INFINITY);
  expect(readCut(cut, 0.5)).toBeNaN();
  // No figure beside a zero field, rather than −Infinity all the way to the next sample.
  expect(readCut({ angle_deg: [0, 1], gain_dBi: [-3, Number.NEGATIVE_INFINITY] }, 0.5)).toBeNaN();
  expect(readCut(cut, 2.5)).toBeNaN();
  expect(readCut(cut, -0.1)).toBeNaN();
  expect(readCut(cut, 3.1)).toBeNaN();
  expect(readCut({ angle_deg: [], gain_dBi: [] }, 0)).toBeNaN();
});

test("paths: one decimal, a gap at what is not finite, and never a NaN in the string", () => {
  const points = [
    [0, 0],
    [1.26, 2.04],
    [Number.NaN, 3],
    [4, 4],
    [5, 5],
  ] as const;
  expect(tracePath(points)).toBe("M0,0L1.3,2M4,4L5,5");
  expect(tracePath([])).toBe("");
  expect(washPath(points, () => [9, 9])).toBe("M9,9L0,0L1.3,2L9,9ZM9,9L4,4L5,5L9,9Z");
  expect(
    washPath(
      [
        [Number.NaN, 1],
        [1, 1],
      ],
      () => [9, 9],
    ),
  ).toBe("");
});
