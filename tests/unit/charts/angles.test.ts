import fc from "fast-check";
import { expect, test } from "vitest";
import { azimuth_deg, bearing_deg, bearingText } from "../../../src/charts/bearing.ts";
import { elevationMap } from "../../../src/charts/elevationMap.ts";
import { elevationTicks } from "../../../src/charts/elevationTicks.ts";
import { elevationWords } from "../../../src/charts/elevationWords.ts";
import { compassPoint, polarPoint } from "../../../src/charts/polarPoint.ts";
import { compassSlice, slicePath } from "../../../src/charts/slicePath.ts";
import { evenly } from "./evenly.ts";

const anElevation = evenly(0, 180);

for (const stretched of [false, true]) {
  const map = elevationMap(stretched);
  const name = stretched ? "stretched" : "true";

  test(`${name} angles: rising, and there and back is the same`, () => {
    fc.assert(
      fc.property(anElevation, anElevation, (a, b) => {
        expect(map.toElevation(map.toScreen(a))).toBeCloseTo(a, 9);
        expect(map.toScreen(map.toElevation(a))).toBeCloseTo(a, 9);
        if (b - a > 1e-6) expect(map.toScreen(b)).toBeGreaterThan(map.toScreen(a));
      }),
      { seed: 1 },
    );
  });

  test(`${name} angles: horizon, zenith and the other horizon stay put, and behind mirrors ahead`, () => {
    for (const e of [0, 90, 180]) expect(map.toScreen(e)).toBeCloseTo(e, 12);
    for (const e of [3, 10, 30, 77]) expect(map.toScreen(180 - e)).toBeCloseTo(180 - map.toScreen(e), 12);
  });
}

test("stretching gives 0 to 30 degrees more than half of the quarter, and does it without a kink at the zenith's side", () => {
  const { toScreen } = elevationMap(true);
  expect(toScreen(30)).toBeGreaterThan(45);
  expect(toScreen(3)).toBeGreaterThan(6);
  // 90 ln(1.5)/ln(5.5) by hand.
  expect(toScreen(10)).toBeCloseTo((90 * Math.log(1.5)) / Math.log(5.5), 10);
  expect(toScreen(90.0001) - toScreen(90)).toBeCloseTo(toScreen(90) - toScreen(89.9999), 9);
});

test("ticks keep their distance and the useful ones are never left out", () => {
  for (const stretched of [false, true]) {
    const map = elevationMap(stretched);
    for (const pxPerDegree of [1.5, 3, 5]) {
      const ticks = elevationTicks(map, pxPerDegree, 18);
      expect(ticks).toContain(30);
      const places = ticks.map((t) => map.toScreen(t) * pxPerDegree);
      for (let i = 1; i < places.length; i++) expect(places[i]! - places[i - 1]!).toBeGreaterThanOrEqual(18 - 1e-9);
    }
  }
});

test("bearings run clockwise from north, azimuths counter-clockwise from the beam", () => {
  expect(bearing_deg(0, 62)).toBe(62);
  expect(bearing_deg(90, 62)).toBe(332);
  expect(bearing_deg(-90, 62)).toBe(152);
  expect(bearing_deg(180, 62)).toBe(242);
  expect(azimuth_deg(332, 62)).toBe(90);
  expect(azimuth_deg(152, 62)).toBe(-90);
  expect(bearingText(7.4)).toBe("007°");
  expect(bearingText(359.7)).toBe("000°");
  // A rounding below north is north, not 360.
  expect(bearing_deg(1e-14, 0)).toBe(0);
});

test("bearing and azimuth undo each other, within a turn", () => {
  fc.assert(
    fc.property(evenly(-180, 180), evenly(0, 360), (azimuth, heading) => {
      const bearing = bearing_deg(azimuth, heading);
      expect(bearing).toBeGreaterThanOrEqual(0);
      expect(bearing).toBeLessThan(360);
      // At the cut behind, −180 and 180 are one direction.
      const turned = Math.abs(azimuth_deg(bearing, heading) - azimuth);
      expect(Math.min(turned, 360 - turned)).toBeLessThan(1e-9);
    }),
    { seed: 2 },
  );
});

test("polar points: right is 0, up is 90; on a compass up is north and right is east", () => {
  expect(polarPoint([100, 100], 0, 10)).toEqual([110, 100]);
  expect(polarPoint([100, 100], 90, 10)[1]).toBeCloseTo(90, 12);
  expect(compassPoint([100, 100], 0, 10)[1]).toBeCloseTo(90, 12);
  expect(compassPoint([100, 100], 90, 10)[0]).toBeCloseTo(110, 12);
  expect(compassPoint([100, 100], 180, 10)[1]).toBeCloseTo(110, 12);
});

test("elevations in words", () => {
  expect([0, 8, 90, 172, 180].map(elevationWords)).toEqual([
    "0° ahead",
    "8° ahead",
    "straight up",
    "8° behind",
    "0° behind",
  ]);
});

test("slices: from the hub out, round the right way, the large arc only past a half turn, to one decimal", () => {
  expect(slicePath([100, 100], 50, 0, 90)).toBe("M100.0,100.0L150.0,100.0A50.0,50.0,0,0,0,100.0,50.0Z");
  expect(slicePath([100, 100], 50, 0, 270)).toBe("M100.0,100.0L150.0,100.0A50.0,50.0,0,1,0,100.0,150.0Z");
  // South, a half turn wide: from west (counter-clockwise) to east.
  expect(compassSlice([100, 100], 50, 180, 180)).toBe("M100.0,100.0L50.0,100.0A50.0,50.0,0,0,0,150.0,100.0Z");
});
