import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bearingFromPivot, fitPlanFrame, onRing, toGround, toSheet } from "../../../src/rooms/yard/planFrame.ts";
import { scaleBar } from "../../../src/rooms/yard/scaleBar.ts";
import { fitSideFrame, heightAt, toSideSheet } from "../../../src/rooms/yard/sideFrame.ts";
import { snapLength } from "../../../src/rooms/yard/snapLength.ts";
import { driven, reflector, withMeasures, yardPlan } from "./yardPlan.ts";

const plan = yardPlan();

describe("the view from above", () => {
  test("north is up, east right, and the beam runs along the heading", () => {
    const frame = fitPlanFrame(plan, 400, 320);
    const { forward_m, left_m } = { forward_m: frame.pivotForward_m, left_m: frame.pivotLeft_m };
    const ahead = (heading: number) => toSheet(frame, heading, forward_m + 1, left_m);
    const s = frame.pxPerM;
    for (const [heading, x, y] of [
      [0, 0, -s],
      [90, s, 0],
      [180, 0, s],
      [270, -s, 0],
    ] as const) {
      expect(ahead(heading).x - frame.centre.x).toBeCloseTo(x, 9);
      expect(ahead(heading).y - frame.centre.y).toBeCloseTo(y, 9);
    }
    // Left of a beam to the north is west.
    expect(toSheet(frame, 0, forward_m, left_m + 1).x - frame.centre.x).toBeCloseTo(-s, 9);
  });

  test("metres to pixels and back is the same place, at any heading and scale", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.integer({ min: 200, max: 1500 }),
        (heading, forward_m, left_m, width) => {
          const frame = fitPlanFrame(plan, width, 300);
          const back = toGround(frame, heading, toSheet(frame, heading, forward_m, left_m));
          expect(Math.abs(back.forward_m - forward_m)).toBeLessThan(1e-9);
          expect(Math.abs(back.left_m - left_m)).toBeLessThan(1e-9);
        },
      ),
      { seed: 4, numRuns: 200 },
    );
  });

  test.each([
    [320, 275],
    [413, 355],
    [900, 420],
  ])("every radial's end lies inside the ring and the ring inside %i × %i, whatever the heading", (width, height) => {
    const crowd = yardPlan({
      elements: [
        driven,
        reflector,
        { ...reflector, id: "c", forward_m: 3, left_m: 9 },
        { ...reflector, id: "d", left_m: -7 },
      ],
    });
    const frame = fitPlanFrame(crowd, width, height);
    expect(frame.ring_px).toBeLessThanOrEqual(Math.min(width, height) / 2 - 30);
    for (let heading = 0; heading < 360; heading += 15)
      for (const element of crowd.elements) {
        const hub = toSheet(frame, heading, element.forward_m, element.left_m);
        const out = Math.hypot(hub.x - frame.centre.x, hub.y - frame.centre.y) + 4 * frame.pxPerM;
        expect(out).toBeLessThanOrEqual(frame.ring_px);
      }
  });

  test("the outermost radial comes within 13 px of the ring: no room is wasted", () => {
    const frame = fitPlanFrame(plan, 400, 320);
    const hub = toSheet(frame, 0, 0, 0);
    expect(Math.hypot(hub.x - frame.centre.x, hub.y - frame.centre.y) + 4 * frame.pxPerM).toBeGreaterThan(
      frame.ring_px - 13,
    );
  });

  test("one thin wire without radials still has a finite scale", () => {
    const frame = fitPlanFrame(
      yardPlan({ elements: [{ ...driven, radials: { ...driven.radials, count: 0 } }] }),
      320,
      275,
    );
    expect(frame.pxPerM).toBeGreaterThan(1);
    expect(frame.pxPerM).toBeLessThan(1000);
  });

  test("bearings off the ring are those they were put on it with", () => {
    const frame = fitPlanFrame(plan, 400, 320);
    for (let bearing = 0; bearing < 360; bearing += 7)
      expect(bearingFromPivot(frame, onRing(frame, bearing, 5))).toBeCloseTo(bearing, 9);
    expect(bearingFromPivot(frame, frame.centre)).toBeNull();
  });
});

describe("the view from the side", () => {
  test.each([
    ["short and far apart", withMeasures({ height_m: 2 }, { height_m: 2, forward_m: -20 })],
    ["tall and close", withMeasures({ height_m: 30 }, { height_m: 32, forward_m: -1 })],
    ["raised", withMeasures({ radials: { ...driven.radials, height_m: 3 } })],
  ])("masts and radials lie inside the sheet: %s", (_, changed) => {
    const frame = fitSideFrame(changed, 400, 210);
    for (const element of changed.elements) {
      const foot = Math.max(0, element.radials.height_m);
      const tip = toSideSheet(frame, element.forward_m, foot + element.height_m);
      // Room for the ring it is dragged by, and for the finger on it.
      expect(tip.y).toBeGreaterThanOrEqual(24);
      for (const reach of [-4, 4]) {
        const end = toSideSheet(frame, element.forward_m + reach, foot);
        expect(end.x).toBeGreaterThanOrEqual(0);
        expect(end.x).toBeLessThanOrEqual(400);
      }
    }
  });

  test("forward is right, up is up, one scale both ways", () => {
    const frame = fitSideFrame(plan, 400, 210);
    const a = toSideSheet(frame, 0, 0);
    const b = toSideSheet(frame, 1, 1);
    expect(b.x - a.x).toBeCloseTo(frame.pxPerM, 9);
    expect(a.y - b.y).toBeCloseTo(frame.pxPerM, 9);
    expect(heightAt(frame, toSideSheet(frame, 0, 7.25).y)).toBeCloseTo(7.25, 9);
  });
});

describe("scaleBar", () => {
  test.each([
    [10, "metric", 110, "10 m", 100],
    [10, "metric", 99, "5 m", 50],
    [22, "metric", 110, "5 m", 110],
    [300, "metric", 110, "20 cm", 60],
    [0.4, "metric", 110, "200 m", 80],
    [10, "imperial", 110, "20 ft", 60.96],
  ] as const)("%s px/m, %s, at most %s px: %s", (pxPerM, units, most, label, length) => {
    const bar = scaleBar(pxPerM, units, most);
    expect(bar.label).toBe(label);
    expect(bar.length_px).toBeCloseTo(length, 9);
  });
});

describe("snapLength", () => {
  test.each([
    [8.4149, "metric", false, 8.41],
    [8.4151, "metric", false, 8.42],
    [8.4154, "metric", true, 8.415],
    [-0.004, "metric", false, 0],
    [0.0254 * 1.06, "imperial", false, 0.0254],
    [0.0254 * 1.07, "imperial", false, 0.0254 * 1.125],
    [0.0254 * 1.02, "imperial", true, 0.0254 * (1 + 1 / 32)],
  ] as const)("%s in %s units, fine %s: %s", (length, units, fine, to) => {
    expect(snapLength(length, units, fine)).toBeCloseTo(to, 12);
  });

  test("centimetres come out as decimals, without a tail", () => {
    for (let cm = 1; cm < 2000; cm++) expect(snapLength(cm / 100 + 0.001, "metric", false)).toBe(cm / 100);
  });
});
