import { describe, expect, test } from "vitest";
import {
  baselineOf,
  checkPlan,
  checkSavedPlan,
  drivenOf,
  interestOf,
  loneVertical,
  type Result,
  reflectorOf,
  type SavedPlan,
  spacingOf,
  wavelength_m,
  withBaseline,
  withElement,
  withElementHeight,
  withElementPosition,
  withFrequency,
  withGround,
  withoutPin,
  withoutReflector,
  withPin,
  withRadials,
  withReflector,
  withSpacing,
} from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join());
  return result.value;
};
const before = JSON.stringify(twoElements);
const lone = withoutReflector(twoElements);

describe("edits change what they name and nothing else", () => {
  test("frequency", () => {
    expect(withFrequency(twoElements, 7.1)).toEqual({ ...twoElements, frequency_MHz: 7.1 });
  });
  test("height", () => {
    const edited = withElementHeight(twoElements, "reflector", 10.9);
    expect(edited.elements[1]).toEqual({ ...twoElements.elements[1], height_m: 10.9 });
    expect(edited.elements[0]).toBe(twoElements.elements[0]);
  });
  test("position", () => {
    expect(withElementPosition(twoElements, "driven", 1, -2).elements[0]).toEqual({
      ...twoElements.elements[0],
      forward_m: 1,
      left_m: -2,
    });
  });
  test("spacing counts from the driven, wherever that stands", () => {
    const moved = withElementPosition(twoElements, "driven", 3, 1);
    const edited = withSpacing(moved, 7);
    expect(reflectorOf(edited)).toEqual({ ...twoElements.elements[1], forward_m: -4 });
    expect(spacingOf(edited)).toBe(7);
    expect(withSpacing(lone, 7)).toBe(lone);
    expect(spacingOf(lone)).toBeUndefined();
  });
  test("radials of all or of one", () => {
    const all = withRadials(twoElements, { count: 32, length_m: 6 });
    expect(all.elements.map((element) => element.radials)).toEqual(
      Array(2).fill({ count: 32, length_m: 6, diameter_mm: 1.6, height_m: 0 }),
    );
    const one = withRadials(twoElements, { height_m: -0.05 }, "reflector");
    expect(one.elements.map((element) => element.radials.height_m)).toEqual([0, -0.05]);
  });
  test("insulation put on and stripped", () => {
    const insulation = { diameter_mm: 2.8, relativePermittivity: 3 };
    const covered = withRadials(twoElements, { insulation });
    expect(covered.elements[0]!.radials.insulation).toEqual(insulation);
    expect(withRadials(covered, { count: 8 }).elements[0]!.radials.insulation).toEqual(insulation);
    expect(withRadials(covered, { insulation: null })).toEqual(twoElements);
  });
  test("ground, with or without another soil model", () => {
    expect(withGround(twoElements, { kind: "perfect" })).toEqual({ ...twoElements, ground: { kind: "perfect" } });
    expect(withGround(twoElements, twoElements.ground, "full-wave").soilModel).toBe("full-wave");
  });
  test("an id that is not there is the caller's mistake", () => {
    expect(() => withElementHeight(twoElements, "third", 9)).toThrow(/withElement.*"third"/);
    expect(() => withRadials(twoElements, { count: 8 }, "third")).toThrow(RangeError);
  });
  test("the plan given is left alone", () => {
    expect(JSON.stringify(twoElements)).toBe(before);
  });
});

describe("who is who", () => {
  test("the driven is the first fed element", () => {
    const swapped = { ...twoElements, elements: [...twoElements.elements].reverse() };
    expect(drivenOf(swapped)?.id).toBe("driven");
    expect(drivenOf({ ...twoElements, elements: [] })).toBeUndefined();
  });
  test("the reflector is the unfed one behind; in front only when there is no other", () => {
    expect(reflectorOf(withSpacing(twoElements, -8))?.id).toBe("reflector");
    const director = { ...twoElements.elements[1]!, id: "director", forward_m: 8 };
    const three = { ...twoElements, elements: [director, ...twoElements.elements] };
    expect(reflectorOf(three)?.id).toBe("reflector");
  });
});

describe("a reflector added", () => {
  const wl = wavelength_m(7.05);
  test("0.2 wavelength behind, joined, otherwise like the driven", () => {
    const added = withReflector(lone);
    const { forward_m: _forward, height_m, id, base, ...same } = reflectorOf(added)!;
    const { forward_m: _f, height_m: _h, id: _i, base: _b, ...drivenSame } = drivenOf(lone)!;
    expect(id).toBe("reflector");
    expect(base).toEqual({ kind: "joined" });
    expect(same).toEqual(drivenSame);
    expect(spacingOf(added)! / wl).toBeCloseTo(0.2, 3);
    expect(checkPlan(added).ok).toBe(true);
    // Independent: the resonant monopole of height/diameter 5000 is 0.2432 wavelength (tests/fixtures).
    expect(height_m / wl).toBeGreaterThan(1.044 * 0.2432);
    expect(height_m / wl).toBeLessThan(1.046 * 0.2432);
  });
  test("its height follows resonance, not a driven that is off resonance", () => {
    const short = withElementHeight(lone, "driven", 7);
    expect(reflectorOf(withReflector(short))?.height_m).toBe(reflectorOf(withReflector(lone))?.height_m);
  });
  test("a tube gets more than 4.5 percent: 30 ohm of base reactance", () => {
    // 25 mm at 14.15 MHz resonates at 5.067 m with 4.92 ohm per percent (independent solution, tests/fixtures).
    const tube = withElement(withFrequency(lone, 14.15), "driven", (element) => ({
      ...element,
      diameter_mm: 25,
      height_m: 5.067,
    }));
    const longer = reflectorOf(withReflector(tube))!.height_m / 5.067 - 1;
    expect(longer * 100 * 4.92).toBeGreaterThan(27);
    expect(longer * 100 * 4.92).toBeLessThan(33);
  });
  test("behind the rearmost of a fed pair", () => {
    const back = { ...twoElements.elements[1]!, base: { kind: "fed" as const } };
    const pair = { ...twoElements, elements: [twoElements.elements[0]!, back] };
    expect(reflectorOf(withReflector(pair))?.forward_m).toBeCloseTo(-8.5 - 0.2 * wl, 2);
    expect(reflectorOf(withReflector(pair))?.id).toBe("reflector-2");
  });
  test("not a second one, and never a fifth element", () => {
    expect(withReflector(twoElements)).toBe(twoElements);
    const four = {
      ...lone,
      elements: [0, 1, 2, 3].map((i) => ({ ...lone.elements[0]!, id: `${i}`, forward_m: -9 * i })),
    };
    expect(withReflector(four)).toBe(four);
  });
  test("taken away again", () => {
    expect(withoutReflector(withReflector(lone))).toEqual(lone);
  });
});

describe("pins", () => {
  const saved: SavedPlan = { ...twoElements, remark: "by the hedge", site: { heading_deg: 62, ituRegion: 1 } };
  test("a pin holds the solver's plan only", () => {
    const pinned = value(withPin(saved, "One vertical", loneVertical(saved)));
    expect(pinned.pins).toEqual([{ id: "pin-1", name: "One vertical", plan: lone }]);
    expect(value(withPin(pinned, "As it was")).pins?.[1]?.plan).toEqual(twoElements);
    expect(checkSavedPlan(pinned).ok).toBe(true);
  });
  test("four fit, the fifth is a problem, a freed id is used again", () => {
    let plan = saved;
    for (const name of ["a", "b", "c", "d"]) plan = value(withPin(plan, name));
    expect(plan.pins?.map((pin) => pin.id)).toEqual(["pin-1", "pin-2", "pin-3", "pin-4"]);
    const fifth = withPin(plan, "e");
    expect(fifth.ok ? [] : fifth.problems.map((problem) => problem.code)).toEqual(["too-many-pins"]);
    expect(value(withPin(withoutPin(plan, "pin-2"), "e")).pins?.map((pin) => pin.id)).toEqual([
      "pin-1",
      "pin-3",
      "pin-4",
      "pin-2",
    ]);
  });
  test("the baseline goes with its pin and stays with another's", () => {
    const two = value(withPin(value(withPin(saved, "a")), "b"));
    const based = withBaseline(two, "pin-2");
    expect(baselineOf(based)?.name).toBe("b");
    expect("baseline" in withoutPin(based, "pin-2")).toBe(false);
    expect(withoutPin(based, "pin-1").baseline).toBe("pin-2");
    expect(withoutPin(based, "pin-9")).toBe(based);
    expect(withBaseline(based, null)).toEqual(two);
    expect(() => withBaseline(two, "pin-9")).toThrow(/withBaseline.*pin-9/);
  });
  test("what to look at, said or not", () => {
    expect(interestOf(saved).rearSector_deg).toBe(120);
    const interest = { elevation_deg: 8, rearSector_deg: 90, azimuthCutElevation_deg: 15 };
    expect(interestOf({ ...saved, interest })).toEqual(interest);
  });
});
