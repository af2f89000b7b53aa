import { expect, test } from "vitest";
import { driveTrial, type MapPicture, trialOf } from "../../../engine/index.ts";
import { mapThresholds } from "../../../src/rooms/trials/map/mapFigures.ts";
import { mapLayout, mapLevels } from "../../../src/rooms/trials/map/mapLayout.ts";
import { readMap } from "../../../src/rooms/trials/map/readMap.ts";
import { okValue } from "../../support/okValue.ts";
import { quickPlan, walk } from "./trialPlan.ts";

const picture = okValue(
  driveTrial(
    okValue(
      trialOf({
        kind: "map",
        plan: quickPlan,
        look: walk.look,
        spacing_wl: { from: 0.1, to: 0.3, points: 21 },
        reflectorHeight_m: { from: 7.2, to: 8, points: 17 },
      }),
    ),
  ),
) as MapPicture;
const layout = mapLayout({ width_px: 700, text_px: 13, tall_px: 400, perMetre: 1, picture });

/** A plane over the map, whose levels are straight lines known beforehand. */
const plane = picture.reflectorHeight_m.flatMap((height_m) => picture.spacing_m.map((s) => 10 * height_m + s));

test("levels lie where the figure has their value", () => {
  const [level] = mapLevels(plane, [80], picture, layout);
  const spots = level!.lines.flat();
  expect(spots.length).toBeGreaterThan(10);
  for (const spot of spots) {
    const { spacing_m, height_m } = layout.at(spot);
    // Straight between the points of the grid a plane is met exactly; pixels are doubles here.
    expect(10 * height_m + spacing_m).toBeCloseTo(80, 6);
  }
});

test("the border of a level leaves out the frame", () => {
  const { plot } = layout;
  for (const level of mapLevels(plane, [76, 80, 84], picture, layout))
    for (const line of level.lines)
      for (const [i, [x, y]] of line.entries()) {
        if (i === 0) continue;
        const [bx, by] = line[i - 1]!;
        const isAlong = (a: number, b: number, edge: number) => Math.abs(a - edge) < 1e-9 && Math.abs(b - edge) < 1e-9;
        expect(isAlong(x, bx, plot.x) || isAlong(x, bx, plot.x + plot.width)).toBe(false);
        expect(isAlong(y, by, plot.y) || isAlong(y, by, plot.y + plot.height)).toBe(false);
      }
});

test("ticks are round numbers inside the map, in metres and in feet", () => {
  for (const perMetre of [1, 1 / 0.3048]) {
    const { xTicks, yTicks } = mapLayout({ width_px: 700, text_px: 13, tall_px: 400, perMetre, picture });
    for (const [ticks, list] of [
      [xTicks, picture.spacing_m],
      [yTicks, picture.reflectorHeight_m],
    ] as const) {
      expect(ticks.length).toBeGreaterThan(2);
      for (const tick of ticks) {
        expect(tick).toBeGreaterThanOrEqual(list[0]! * perMetre - 1e-9);
        expect(tick).toBeLessThanOrEqual(list.at(-1)! * perMetre + 1e-9);
      }
    }
  }
});

test("a place of the grid reads its own value, one between the mean of a plane, one off the map nothing", () => {
  const { figures, spacing_m, reflectorHeight_m } = picture;
  const at = (column: number, row: number) => ({ spacing_m: spacing_m[column]!, height_m: reflectorHeight_m[row]! });
  for (const [column, row] of [
    [0, 0],
    [7, 5],
    [20, 16],
  ] as const)
    expect(readMap(picture, figures.forward_dBi, at(column, row))).toBeCloseTo(
      figures.forward_dBi[row * 21 + column]!,
      9,
    );
  const between = {
    spacing_m: (spacing_m[3]! + spacing_m[4]!) / 2,
    height_m: (reflectorHeight_m[8]! + reflectorHeight_m[9]!) / 2,
  };
  expect(readMap(picture, plane, between)).toBeCloseTo(10 * between.height_m + between.spacing_m, 9);
  expect(readMap(picture, plane, { spacing_m: spacing_m[0]! - 0.01, height_m: 7.5 })).toBeNaN();
});

test("a dozen levels or so, even ones, with zero among those of front to back where it is crossed", () => {
  const values = [-20, -5, 0, 12.3];
  const levels = mapThresholds("frontToBack", values);
  expect(levels.length).toBeGreaterThan(4);
  expect(levels.length).toBeLessThanOrEqual(13);
  expect(levels).toContain(0);
  expect(levels[0]).toBe(-4);
  expect(mapThresholds("forward", [3, 3])).toEqual([]);
});
