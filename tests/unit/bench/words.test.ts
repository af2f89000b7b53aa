import { describe, expect, test } from "vitest";
import {
  asMeasuredPlan,
  defaultAllowance,
  expectedReadings,
  type SavedPlan,
  withGround,
} from "../../../engine/index.ts";
import { dayOrWhy } from "../../../src/rooms/bench/dayOrWhy.ts";
import { freshId } from "../../../src/rooms/bench/freshId.ts";
import { asCutPlan, cutLength_m } from "../../../src/rooms/bench/refit/asCut.ts";
import { today } from "../../../src/rooms/bench/today.ts";
import { withBench } from "../../../src/rooms/bench/useBenchEdit.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { adviceWords } from "../../../src/text/adviceWords.ts";
import { stepWords } from "../../../src/text/stepWords.ts";
import { driveInPlace } from "../../../src/worker/driveInPlace.ts";
import { okValue } from "../../support/okValue.ts";

const plan: SavedPlan = withGround(demoPlan, { kind: "perfect" });
const loaded: SavedPlan = {
  ...plan,
  elements: plan.elements.map((one) => ({
    ...one,
    height_m: 7.25,
    base: one.id === "reflector" ? { kind: "loaded" as const, resistance_ohm: 0.2, reactance_ohm: 30 } : one.base,
  })),
};

describe("words for whatever the engine asks for", () => {
  test.each([
    ["a pair", plan],
    ["a pair that can be reversed", loaded],
  ])("every step and every advice of %s has words, with no hole where a figure stands", (_, of) => {
    const sheet = okValue(driveInPlace(okValue(expectedReadings({ plan: of, allowance: defaultAllowance }))));
    expect(sheet.steps.length).toBeGreaterThan(10);
    for (const step of sheet.steps) {
      expect(stepWords[step.kind].todo.length).toBeGreaterThan(0);
      for (const rule of step.advice) expect(`${rule.code}: ${adviceWords(rule)}`).toMatch(/: [^–]{20,}[.?]/);
    }
  });
  test("a code without words says nothing rather than its name", () => {
    expect(adviceWords({ code: "never-heard-of", limit: 3 })).toBeNull();
  });
});

describe("a correction and the plan without it", () => {
  const asMeasured = {
    date: "2026-05-31",
    elements: [
      { elementId: "driven", lengthFactor: 1.013, series_ohm: { re: 4.5, im: -1.2 } },
      { elementId: "reflector", lengthFactor: 0.991, series_ohm: { re: 7, im: 2 } },
    ],
  };
  test("taken back, every length and base is what it was before", () => {
    const corrected = withBench(asMeasuredPlan(plan, asMeasured), { asMeasured });
    expect(corrected.elements[0]!.height_m).toBeCloseTo(7.25 * 1.013, 12);
    expect(asCutPlan(corrected).elements).toEqual(plan.elements);
    expect(cutLength_m(asMeasured, "reflector", 0.991)).toBeCloseTo(1, 12);
  });
  test("what was in series by plan stays in series", () => {
    const own = {
      ...plan,
      elements: plan.elements.map((e) => ({ ...e, baseSeries: { resistance_ohm: 3, reactance_ohm: 1 } })),
    };
    const back = asCutPlan(withBench(asMeasuredPlan(own, asMeasured), { asMeasured }));
    expect(back.elements[0]!.baseSeries!.resistance_ohm).toBeCloseTo(3, 12);
    expect(back.elements[0]!.baseSeries!.reactance_ohm).toBeCloseTo(1, 12);
  });
  test("a plan without a correction is itself", () => expect(asCutPlan(plan)).toBe(plan));
});

describe("small things", () => {
  test("a bench with nothing in it is no part of a plan", () => {
    const some = withBench(plan, { onAir: [] });
    expect(some.bench).toEqual({ onAir: [] });
    expect("bench" in withBench(some, { onAir: undefined })).toBe(false);
  });
  test.each([
    ["2026-02-28", null],
    ["2024-02-29", null],
    ["2026-02-29", /no 2026-02-29/],
    ["2026-13-01", /no 2026-13-01/],
    ["31.5.2026", /year-month-day/],
    ["", /year-month-day/],
  ] as const)("day %j", (text, says) => {
    const why = dayOrWhy(text);
    if (says === null) expect(why).toBeNull();
    else expect(why).toMatch(says);
  });
  test("today is the day of the person's clock", () => expect(today(new Date(2026, 4, 3, 23, 59))).toBe("2026-05-03"));
  test("an id is none that is taken", () => {
    expect(freshId("entry", [{ id: "entry-2" }, { id: "entry-3" }])).toBe("entry-4");
    expect(freshId("entry", [])).toBe("entry-1");
  });
});
