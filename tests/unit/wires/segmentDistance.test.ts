import fc from "fast-check";
import { expect, test } from "vitest";
import { segmentDistance } from "../../../engine/wires/segmentDistance.ts";
import { between } from "../../support/between.ts";

type Point = readonly [number, number, number];
const point: fc.Arbitrary<Point> = fc.tuple(between(-2, 2), between(-2, 2), between(-2, 2));

/** Least distance from a point to a segment. */
function toSegment(p: Point, a: Point, b: Point): number {
  const d = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
  const t = ((p[0] - a[0]) * d[0] + (p[1] - a[1]) * d[1] + (p[2] - a[2]) * d[2]) / (d[0] ** 2 + d[1] ** 2 + d[2] ** 2);
  const u = Math.min(1, Math.max(0, t));
  return Math.hypot(p[0] - a[0] - u * d[0], p[1] - a[1] - u * d[1], p[2] - a[2] - u * d[2]);
}

test.each<[string, Point, Point, Point, Point, number]>([
  ["crossing in mid-air", [-1, 0, 0], [1, 0, 0], [0, -1, 0.3], [0, 1, 0.3], 0.3],
  ["crossing outright", [-1, 0, 0], [1, 0, 0], [0, -1, 0], [0, 1, 0], 0],
  ["end to side", [0, 0, 0], [0, 0, 2], [0.5, 0, 1], [3, 0, 1], 0.5],
  ["end to end", [0, 0, 0], [1, 0, 0], [4, 4, 0], [9, 4, 0], 5],
  ["side by side", [0, 0, 0], [0, 0, 2], [0.2, 0, 1], [0.2, 0, 5], 0.2],
  ["side by side, the other way", [0, 0, 0], [0, 0, 2], [0.2, 0, 5], [0.2, 0, 1], 0.2],
  ["in one line with a gap", [0, 0, 0], [0, 0, 2], [0, 0, 3.5], [0, 0, 5], 1.5],
  ["in one line, one within the other", [0, 0, 0], [0, 0, 5], [0, 0, 2], [0, 0, 3], 0],
])("%s", (_, p0, p1, q0, q1, want) => {
  expect(segmentDistance(p0, p1, q0, q1)).toBeCloseTo(want, 12);
  expect(segmentDistance(q0, q1, p0, p1)).toBeCloseTo(want, 12);
});

test("any two, against trying 400 points along the first; parallel ones among them", () => {
  fc.assert(
    fc.property(point, point, point, point, fc.boolean(), between(-2, 2), (p0, p1, q0, other, parallel, stretch) => {
      fc.pre(Math.hypot(p1[0] - p0[0], p1[1] - p0[1], p1[2] - p0[2]) > 0.05);
      const q1: Point = parallel
        ? [q0[0] + stretch * (p1[0] - p0[0]), q0[1] + stretch * (p1[1] - p0[1]), q0[2] + stretch * (p1[2] - p0[2])]
        : other;
      fc.pre(Math.hypot(q1[0] - q0[0], q1[1] - q0[1], q1[2] - q0[2]) > 0.05);
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i <= 400; i++) {
        const u = i / 400;
        const p: Point = [p0[0] + u * (p1[0] - p0[0]), p0[1] + u * (p1[1] - p0[1]), p0[2] + u * (p1[2] - p0[2])];
        least = Math.min(least, toSegment(p, q0, q1));
      }
      const got = segmentDistance(p0, p1, q0, q1);
      // Trying never finds less than there is, and misses by no more than half a step.
      expect(least - got).toBeGreaterThan(-1e-9);
      expect(least - got).toBeLessThan(0.01);
    }),
    { seed: 300, numRuns: 300 },
  );
});
