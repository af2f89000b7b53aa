import fc from "fast-check";
import { expect, test } from "vitest";
import { lineAnchors } from "../../../src/charts/lineAnchors.ts";
import { boxesTouch, type LabelScene, placeLabels, segmentTouches } from "../../../src/charts/placeLabels.ts";
import { thinned } from "../../../src/charts/thinned.ts";
import type { Spot } from "../../../src/charts/tracePath.ts";

const frame = { x: 0, y: 0, width: 300, height: 200 };
const spot = fc.tuple(fc.integer({ min: -20, max: 320 }), fc.integer({ min: -20, max: 220 }));
const aLine = fc.array(
  fc.oneof({ weight: 9, arbitrary: spot }, { weight: 1, arbitrary: fc.constant([Number.NaN, 0] as [number, number]) }),
  { minLength: 2, maxLength: 4 },
);
const fractions = Array.from({ length: 21 }, (_, i) => i / 20);

const aScene: fc.Arbitrary<LabelScene> = fc
  .record({
    lines: fc.array(aLine, { minLength: 1, maxLength: 4 }),
    widths: fc.array(fc.integer({ min: 10, max: 120 }), { minLength: 5, maxLength: 5 }),
    needed: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
    keepOut: fc.array(
      fc.record({
        x: fc.integer({ min: 0, max: 280 }),
        y: fc.integer({ min: 0, max: 180 }),
        width: fc.integer({ min: 1, max: 60 }),
        height: fc.integer({ min: 1, max: 40 }),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ lines, widths, needed, keepOut }) => ({
    labels: lines.map((points, i) => ({
      id: String(i),
      width: widths[i]!,
      height: 16,
      isNeeded: needed[i]!,
      anchors: lineAnchors(points, [150, 200], fractions),
    })),
    lines: lines.map((points, i) => ({ of: String(i), points })),
    keepOut,
    frame,
  }));

/** Whether any of many points along p→q lies inside a box: slow, simple, and no kin of the clipping it checks. */
function walksThrough(p: Spot, q: Spot, b: { x: number; y: number; width: number; height: number }): boolean {
  for (let i = 0; i <= 2000; i++) {
    const x = p[0] + (i / 2000) * (q[0] - p[0]);
    const y = p[1] + (i / 2000) * (q[1] - p[1]);
    if (x > b.x && x < b.x + b.width && y > b.y && y < b.y + b.height) return true;
  }
  return false;
}

test("no placed label touches a label, a line or what is kept out, and none leaves the frame", () => {
  let placed = 0;
  fc.assert(
    fc.property(aScene, (scene) => {
      const boxes = [...placeLabels(scene).values()];
      placed += boxes.length;
      boxes.forEach((box, i) => {
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.y).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(300);
        expect(box.y + box.height).toBeLessThanOrEqual(200);
        for (const other of boxes.slice(i + 1)) expect(boxesTouch(box, other)).toBe(false);
        for (const out of scene.keepOut) expect(boxesTouch(box, out)).toBe(false);
        for (const { points } of scene.lines)
          for (let k = 1; k < points.length; k++) expect(walksThrough(points[k - 1]!, points[k]!, box)).toBe(false);
      });
    }),
    { seed: 3, numRuns: 150 },
  );
  // A placer that places nothing would pass all of the above.
  expect(placed).toBeGreaterThan(50);
});

test("a label stands nearer to its own line than to any other that has a name", () => {
  const level = (y: number) => Array.from({ length: 31 }, (_, i): Spot => [i * 10, y]);
  const lines = [60, 80, 100].map((y, i) => ({ of: String(i), points: level(y) }));
  const labels = lines.map((l) => ({
    id: l.of,
    width: 40,
    height: 10,
    anchors: lineAnchors(l.points, [150, 500], fractions),
  }));
  const boxes = placeLabels({ labels, lines, keepOut: [], frame });
  expect(boxes.size).toBeGreaterThanOrEqual(2);
  for (const [id, box] of boxes) {
    const gap = (y: number) => Math.max(box.y - y, y - (box.y + box.height));
    const own = gap([60, 80, 100][Number(id)]!);
    for (const [i, y] of [60, 80, 100].entries()) if (String(i) !== id) expect(gap(y)).toBeGreaterThan(own);
  }
});

test("a label keeps its first place while that is free, and has none when nothing is", () => {
  const points: Spot[] = [
    [0, 100],
    [300, 100],
  ];
  const anchors = [
    { at: [100, 100] as const, away: [0, -1] as const },
    { at: [200, 100] as const, away: [0, -1] as const },
  ];
  const label = { id: "a", width: 40, height: 16, anchors };
  const lines = [{ of: "a", points }];
  expect(placeLabels({ labels: [label], lines, keepOut: [], frame }).get("a")?.x).toBe(80);
  const blocked = { x: 70, y: 0, width: 60, height: 99 };
  expect(placeLabels({ labels: [label], lines, keepOut: [blocked], frame }).get("a")?.x).toBe(180);
  expect(placeLabels({ labels: [label], lines, keepOut: [frame], frame }).size).toBe(0);
});

test("a segment is seen to cross a box even when both its ends lie outside", () => {
  const box = { x: 10, y: 10, width: 10, height: 10 };
  expect(segmentTouches([0, 0], [30, 30], box)).toBe(true);
  expect(segmentTouches([0, 15], [30, 15], box)).toBe(true);
  expect(segmentTouches([15, 0], [15, 30], box)).toBe(true);
  expect(segmentTouches([12, 12], [13, 13], box)).toBe(true);
  expect(segmentTouches([0, 25], [25, 50], box)).toBe(false);
  expect(segmentTouches([0, 15], [30, 46], box)).toBe(false);
  expect(segmentTouches([Number.NaN, 0], [30, 30], box)).toBe(false);
  fc.assert(
    fc.property(spot, spot, (p, q) => {
      if (walksThrough(p, q, { x: 100, y: 80, width: 60, height: 30 }))
        expect(segmentTouches(p, q, { x: 100, y: 80, width: 60, height: 30 })).toBe(true);
    }),
    { seed: 4 },
  );
});

test("thinning keeps the ends and stays near the number asked for", () => {
  const points = Array.from({ length: 361 }, (_, i): Spot => [i, 0]);
  const few = thinned(points, 120);
  expect(few.length).toBeLessThanOrEqual(122);
  expect(few[0]).toBe(points[0]);
  expect(few.at(-1)).toBe(points.at(-1));
  // 360 points at every third end on the 358th: the last has to be added.
  expect(thinned(points.slice(0, 360), 120).at(-1)).toBe(points[359]);
  expect(thinned(points.slice(0, 5), 120)).toHaveLength(5);
});

test("anchors lead away from the hub first, then toward it, square to the line, and a gap gives none", () => {
  const line: Spot[] = [
    [0, 100],
    [10, 100],
    [20, 100],
    [30, 100],
    [40, 100],
  ];
  expect(lineAnchors(line, [20, 200], [0.5])).toEqual([
    { at: [20, 100], away: [0, -1] },
    { at: [20, 100], away: [-0, 1] },
  ]);
  expect(lineAnchors(line.toReversed(), [20, 0], [0.5])[0]!.away[1]).toBe(1);
  const holed = line.map((p, i): Spot => (i === 2 ? [Number.NaN, 100] : p));
  expect(lineAnchors(holed, [20, 200], [0.5])).toEqual([]);
});
