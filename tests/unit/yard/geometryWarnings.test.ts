import { describe, expect, test } from "vitest";
import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { geometryWarnings, overlapOfFields } from "../../../src/rooms/yard/geometryWarnings.ts";
import { driven, reflector, withMeasures, yardPlan } from "./yardPlan.ts";

const codes = (plan: SavedPlan) => geometryWarnings(plan).map((warning) => warning.code);
const radials = (change: Partial<ElementPlan["radials"]>) => ({ radials: { ...driven.radials, ...change } });
/** The wavelength is 42 m. */
const spaced = (wl: number) => withMeasures({}, { forward_m: -42 * wl });
const short = radials({ length_m: 1 });

test("nothing is said against a plan that follows common practice", () => {
  expect(codes(yardPlan())).toEqual([]);
});

test("one vertical has nothing said about a reflector", () => {
  expect(codes(yardPlan({ elements: [driven] }))).toEqual([]);
});

describe("each warning fires at its number and is silent just inside", () => {
  test.each<[string, SavedPlan, SavedPlan]>([
    [
      "spacing-close",
      withMeasures(short, { ...short, forward_m: -42 * 0.0999 }),
      withMeasures(short, { ...short, forward_m: -42 * 0.1001 }),
    ],
    ["spacing-far", spaced(0.3001), spaced(0.2999)],
    [
      "reflector-ahead",
      withMeasures(short, { ...short, forward_m: 8 }),
      withMeasures(short, { ...short, forward_m: -8 }),
    ],
    ["reflector-short", withMeasures({}, { height_m: 10.199 }), withMeasures({}, { height_m: 10.2 })],
    ["reflector-open", withMeasures({}, { base: { kind: "open" } }), yardPlan()],
    ["unlike-diameters", withMeasures({}, { diameter_mm: 3 }), yardPlan()],
    [
      "reflector-few-radials",
      withMeasures(radials({ count: 32 }), radials({ count: 15 })),
      withMeasures(radials({ count: 32 }), radials({ count: 16 })),
    ],
    [
      "few-radials",
      withMeasures(radials({ count: 7 }), radials({ count: 8 })),
      withMeasures(radials({ count: 8 }), radials({ count: 8 })),
    ],
    [
      "few-raised-radials",
      withMeasures(radials({ count: 7, height_m: 0.101 }), radials({ count: 8 })),
      withMeasures(radials({ count: 8, height_m: 0.101 }), radials({ count: 8 })),
    ],
    [
      "long-sparse-radials",
      yardPlan({ elements: [{ ...driven, ...radials({ count: 15, length_m: 10.51 }) }] }),
      yardPlan({ elements: [{ ...driven, ...radials({ count: 15, length_m: 10.49 }) }] }),
    ],
    [
      "long-sparse-radials",
      yardPlan({ elements: [{ ...driven, ...radials({ count: 15, length_m: 12 }) }] }),
      yardPlan({ elements: [{ ...driven, ...radials({ count: 16, length_m: 12 }) }] }),
    ],
    [
      "radials-overlap",
      withMeasures(radials({ length_m: 4.21 }), radials({ length_m: 4.21 })),
      withMeasures(radials({ length_m: 4.2 }), radials({ length_m: 4.2 })),
    ],
  ])("%s", (code, over, inside) => {
    expect(codes(over)).toContain(code);
    expect(codes(inside)).not.toContain(code);
  });
});

describe("which warnings go together", () => {
  test("a reflector without radials is poorly grounded even where the driven has none", () => {
    expect(codes(withMeasures(radials({ count: 0 }), radials({ count: 0 })))).toContain("reflector-few-radials");
  });

  test("percent longer is not judged where thicknesses differ, nor for a loaded base", () => {
    expect(codes(withMeasures({}, { diameter_mm: 3, height_m: 10 }))).not.toContain("reflector-short");
    expect(
      codes(withMeasures({}, { height_m: 10, base: { kind: "loaded", resistance_ohm: 0, reactance_ohm: 40 } })),
    ).not.toContain("reflector-short");
  });

  test("radials are not judged over a perfect ground", () => {
    const few = radials({ count: 2, length_m: 9 });
    expect(codes({ ...withMeasures(few, few), ground: { kind: "perfect" } })).toEqual([]);
  });

  test("raised radials may be long and few in number from eight on", () => {
    const raised = radials({ count: 8, length_m: 11, height_m: 2 });
    expect(codes(yardPlan({ elements: [{ ...driven, ...raised }] }))).toEqual([]);
  });

  test("messages carry the limit, stay the same words as the measure runs on, and stand at the right element", () => {
    const [warning] = geometryWarnings(spaced(0.35));
    expect(warning).toMatchObject({ field: "spacing", message: expect.stringContaining("0.3 wl") });
    expect(geometryWarnings(spaced(0.42))[0]).toEqual(warning);
    const few = geometryWarnings(withMeasures({}, radials({ count: 3 })));
    expect(few.every((w) => w.elementId === "back" && w.field === "radialCount")).toBe(true);
    expect(few.map((w) => w.code)).toEqual(["reflector-few-radials", "few-radials"]);
  });
});

test("overlapOfFields measures between hubs, sideways too, and ignores fields that are not there", () => {
  expect(
    overlapOfFields({ ...driven, ...radials({ length_m: 5 }) }, { ...reflector, ...radials({ length_m: 5 }) }),
  ).toBeCloseTo(1.6, 12);
  expect(overlapOfFields(driven, { ...reflector, forward_m: -3, left_m: 4 })).toBeCloseTo(3, 12);
  expect(overlapOfFields(driven, { ...reflector, forward_m: -1, ...radials({ count: 0 }) })).toBe(0);
});
