import { expect, test } from "vitest";
import { curveThrough } from "../../../engine/sweep/curveThrough.ts";

test("five points are enough for any polynomial of the fourth degree, to rounding, over any interval", () => {
  const re = (x: number) => 3 - 2 * x + 0.5 * x ** 4;
  const im = (x: number) => x ** 3 - 7;
  for (const scale of [0.001, 1, 1000]) {
    const places = [-1, -0.6, 0.1, 0.7, 1];
    const curve = curveThrough(places.map((x) => ({ at: scale * x, re: re(x), im: im(x) })));
    for (const x of [-0.9, -0.6, 0, 0.33, 1]) {
      // Values of up to 10, and 16 digits.
      expect(curve(scale * x).re).toBeCloseTo(re(x), 13);
      expect(curve(scale * x).im).toBeCloseTo(im(x), 13);
    }
  }
});

test("one point is a constant; two at one place are refused", () => {
  expect(curveThrough([{ at: 5, re: 1, im: 2 }])(7)).toEqual({ re: 1, im: 2 });
  const twice = { at: 5, re: 1, im: 2 };
  expect(() => curveThrough([twice, { at: 6, re: 1, im: 2 }, twice])).toThrow(RangeError);
});
