import fc from "fast-check";
import { expect, test } from "vitest";
import { fewerPoints, leftOut_px } from "../../../src/charts/fewerPoints.ts";
import type { Spot } from "../../../src/charts/tracePath.ts";

/** From a point to the nearest of a line. */
function distance([x, y]: Spot, line: readonly Spot[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < line.length; i++) {
    const [x0, y0] = line[i - 1]!;
    const [dx, dy] = [line[i]![0] - x0, line[i]![1] - y0];
    const t = Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy || 1)));
    least = Math.min(least, Math.hypot(x - x0 - t * dx, y - y0 - t * dy));
  }
  return least;
}

const circle = (radius: number, count: number): Spot[] =>
  Array.from({ length: count }, (_, i) => {
    const a = (2 * Math.PI * i) / (count - 1);
    return [radius * Math.cos(a), radius * Math.sin(a)];
  });

test("a circle of a point for each degree needs far fewer", () => {
  const all = circle(60, 361);
  const few = fewerPoints(all);
  expect(few.length).toBeLessThan(100);
  expect(few[0]).toBe(all[0]);
  expect(few.at(-1)).toBe(all.at(-1));
});

test("no point left out lies off the line, whatever the line is", () => {
  const step = fc.tuple(fc.double({ min: -4, max: 4, noNaN: true }), fc.double({ min: -4, max: 4, noNaN: true }));
  fc.assert(
    fc.property(fc.array(step, { minLength: 2, maxLength: 60 }), (steps) => {
      let at: Spot = [0, 0];
      const all = steps.map(([dx, dy]): Spot => {
        at = [at[0] + dx, at[1] + dy];
        return at;
      });
      const few = fewerPoints(all);
      // Before its first and past its last point a piece may be overrun by as much again.
      for (const point of all) expect(distance(point, few)).toBeLessThanOrEqual(leftOut_px * Math.SQRT2 + 1e-9);
    }),
    { seed: 11, numRuns: 300 },
  );
});

test("a thorn thinner than the line between its feet keeps its tip", () => {
  const all: Spot[] = [
    [0, 0],
    [1, 0],
    [2, 0],
    [2.05, 5],
    [2.1, 0],
    [3, 0],
  ];
  expect(fewerPoints(all)).toContain(all[3]);
});

test("gaps stay, with the points on either side", () => {
  const nan: Spot = [Number.NaN, Number.NaN];
  const all: Spot[] = [[0, 0], [1, 0], [2, 0], nan, [4, 0], [5, 0], [6, 0]];
  expect(fewerPoints(all)).toEqual([[0, 0], [2, 0], nan, [4, 0], [6, 0]]);
  expect(fewerPoints([])).toEqual([]);
});
