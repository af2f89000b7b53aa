import { describe, expect, test } from "vitest";
import {
  checkSavedPlan,
  decodePlanLink,
  defaultFeedline,
  encodePlanLink,
  feedlineOf,
  lineOfCable,
  lineTypes,
  type PlanFeedline,
  readPlanFile,
  type SavedPlan,
  withFeedline,
  writePlanFile,
} from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

const whole: PlanFeedline = {
  cable: {
    kind: "own",
    impedance_ohm: 51,
    velocityFactor: 0.7,
    loss: [
      { frequency_MHz: 10, loss_dBPer100m: 2 },
      { frequency_MHz: 50, loss_dBPer100m: 5 },
    ],
  },
  length_m: 31.5,
  sectionId: "rg-6",
  power_W: 400,
  swrLimit: 1.5,
  coilQ: 150,
  capacitorQ: 800,
  match: "quarter-wave/line.rg-6.1",
  pair: { magnitude: 0.9, phase_deg: 105, asDrawn: true },
  reversal: { goal: "as-now", load: "stub" },
};
const saved: SavedPlan = { ...twoElements, feedline: whole };
const found = (change: object): string[] => {
  const result = checkSavedPlan({ ...twoElements, feedline: { ...whole, ...change } });
  return result.ok ? [] : result.problems.map(({ where, code }) => `${where}: ${code}`).sort();
};
const cable = (change: object) => ({ cable: { ...whole.cable, ...change } });

describe("the feed line in a plan", () => {
  test("passes the check, and comes back from file and link as it was", () => {
    expect(checkSavedPlan(saved)).toEqual({ ok: true, value: saved });
    expect(readPlanFile(writePlanFile(saved))).toEqual({ ok: true, value: saved });
    expect(decodePlanLink(encodePlanLink(saved))).toEqual({ ok: true, value: saved });
    expect(checkSavedPlan(withFeedline(twoElements, {})).ok).toBe(true);
  });

  const cases: [string, object, string[]][] = [
    ["zero length", { length_m: 0 }, ["feedline.length_m: out-of-range"]],
    [
      "negative loss",
      cable({
        loss: [
          { frequency_MHz: 10, loss_dBPer100m: -1 },
          { frequency_MHz: 50, loss_dBPer100m: 5 },
        ],
      }),
      ["feedline.cable.loss[0].loss_dBPer100m: out-of-range"],
    ],
    ["one loss", cable({ loss: [{ frequency_MHz: 10, loss_dBPer100m: 1 }] }), ["feedline.cable.loss: wrong-count"]],
    ["faster than light", cable({ velocityFactor: 1.01 }), ["feedline.cable.velocityFactor: out-of-range"]],
    ["no impedance", cable({ impedance_ohm: 0 }), ["feedline.cable.impedance_ohm: out-of-range"]],
    ["unknown kind", cable({ kind: "wet string" }), ["feedline.cable.kind: unknown-choice"]],
    [
      "unknown cable",
      { cable: { kind: "listed", id: "none" }, sectionId: "x" },
      ["feedline.cable.id: unknown-cable", "feedline.sectionId: unknown-cable"],
    ],
    [
      "power, limit, Q",
      { power_W: 0, swrLimit: 1, coilQ: 0, capacitorQ: "good" },
      [
        "feedline.capacitorQ: wrong-type",
        "feedline.coilQ: out-of-range",
        "feedline.power_W: out-of-range",
        "feedline.swrLimit: out-of-range",
      ],
    ],
    ["match", { match: 4 }, ["feedline.match: wrong-type"]],
    [
      "pair",
      { pair: { magnitude: 0, phase_deg: 181, asDrawn: "yes" } },
      [
        "feedline.pair.asDrawn: unknown-choice",
        "feedline.pair.magnitude: out-of-range",
        "feedline.pair.phase_deg: out-of-range",
      ],
    ],
    [
      "reversal",
      { reversal: { goal: "luck" } },
      ["feedline.reversal.goal: unknown-choice", "feedline.reversal.load: missing"],
    ],
  ];
  test.each(cases)("%s", (_, change, problems) => {
    expect(found(change)).toEqual(problems);
  });
  test("messages name value and limit", () => {
    const result = checkSavedPlan({ ...saved, feedline: { ...whole, length_m: 0 } });
    expect(result.ok ? "" : result.problems[0]!.message).toBe(
      "The length of the feed line is 0 m; it must be at least 0.1 m and at most 1000 m.",
    );
  });
  test("no feed line at all is one that is assumed; a feed line that is no group is refused", () => {
    expect(feedlineOf(twoElements)).toBe(defaultFeedline);
    const result = checkSavedPlan({ ...twoElements, feedline: 3 });
    expect(result.ok ? "" : result.problems.map((p) => p.code)).toEqual(["wrong-type"]);
  });
});

describe("edits and cables", () => {
  test("a change keeps the rest, and undefined takes a choice back", () => {
    const changed = withFeedline(saved, { length_m: 12, match: undefined });
    const { match: _, ...rest } = whole;
    expect(changed.feedline).toEqual({ ...rest, length_m: 12 });
    expect(changed.elements).toBe(saved.elements);
    expect(withFeedline(twoElements, { power_W: 5 }).feedline).toEqual({ ...defaultFeedline, power_W: 5 });
  });
  test("every listed cable can be calculated with; an own one takes its own figures; an unknown one is refused", () => {
    for (const { id, impedance_ohm } of lineTypes) {
      const made = lineOfCable({ kind: "listed", id });
      expect(made.ok && made.value.impedance_ohm).toBe(impedance_ohm);
    }
    const own = lineOfCable(whole.cable);
    expect(own.ok && [own.value.impedance_ohm, own.value.velocityFactor]).toEqual([51, 0.7]);
    const unknown = lineOfCable({ kind: "listed", id: "none" });
    expect(unknown.ok ? "" : unknown.problems[0]!.message).toContain('"none"');
  });
});
