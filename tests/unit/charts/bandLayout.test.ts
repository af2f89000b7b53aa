import { expect, test } from "vitest";
import { bandLayout } from "../../../src/charts/bandLayout.ts";

const asked = { width_px: 400, text_px: 13, top: 3, from_MHz: 7, to_MHz: 7.2, values: [] } as const;

test("frequency runs from edge to edge and back again; outside the plot the nearest edge is read", () => {
  const l = bandLayout({ ...asked, quantity: "swr" });
  expect(l.x(7)).toBeCloseTo(l.plot.x, 9);
  expect(l.x(7.2)).toBeCloseTo(l.plot.x + l.plot.width, 9);
  expect(l.frequencyAt([l.x(7.13), 0])).toBeCloseTo(7.13, 9);
  expect(l.frequencyAt([-50, 0])).toBeCloseTo(7, 9);
});

test("SWR 1 stands on the foot and the top on the top, straight to 5, on a logarithm to 10", () => {
  for (const top of [3, 5, 10] as const) {
    const l = bandLayout({ ...asked, quantity: "swr", top });
    const foot = l.plot.y + l.plot.height;
    expect(l.y(1)).toBeCloseTo(foot, 9);
    expect(l.y(top)).toBeCloseTo(l.plot.y, 9);
    expect(l.ticks).toEqual(expect.arrayContaining([1, 1.5, 2, top]));
    const middle = top === 10 ? Math.sqrt(10) : (1 + top) / 2;
    expect(l.y(middle)).toBeCloseTo((foot + l.plot.y) / 2, 9);
    // No power taken: far above the frame, and still a number. No figure: none.
    expect(l.y(Number.POSITIVE_INFINITY)).toBeLessThan(-1000);
    expect(Number.isFinite(l.y(Number.POSITIVE_INFINITY))).toBe(true);
    expect(l.y(Number.NaN)).toBeNaN();
  }
});

test("a scale of ohms holds zero and every value, and is a scale even with none", () => {
  const l = bandLayout({ ...asked, quantity: "reactance", values: [-27, 16, Number.NaN, Number.POSITIVE_INFINITY] });
  for (const v of [-27, 0, 16]) {
    expect(l.y(v)).toBeGreaterThanOrEqual(l.plot.y);
    expect(l.y(v)).toBeLessThanOrEqual(l.plot.y + l.plot.height);
  }
  expect(l.ticks).toContain(0);
  const empty = bandLayout({ ...asked, quantity: "resistance" });
  expect(empty.ticks.length).toBeGreaterThan(2);
  expect(empty.y(0)).toBeCloseTo(empty.plot.y + empty.plot.height, 9);
});
