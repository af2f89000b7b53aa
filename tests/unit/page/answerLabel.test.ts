import { describe, expect, test } from "vitest";
import { type SavedPlan, withGround, withRadials } from "../../../engine/index.ts";
import { answerLabel } from "../../../src/headline/answerLabel.ts";
import { type Answer, noAnswer } from "../../../src/store/Answer.ts";
import { answerModels } from "../../../src/store/answerModels.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";

const readout = {} as NonNullable<Answer["readout"]>;
const say = (plan: SavedPlan, facts: Partial<Answer>, isGood = true) =>
  answerLabel(plan, isGood, { ...noAnswer, readout, previewOnly: answerModels(plan).obstacles, ...facts });
const raised = withRadials(demoPlan, { height_m: 2 });
const coming = { refining: { done: 0, total: 2 } };

describe("the label says what the figures are", () => {
  test.each([
    ["at first", demoPlan, { readout: null, state: "working", ...coming }, "quick preview, full answer coming"],
    ["a preview for now", demoPlan, { state: "fresh", ...coming }, "quick preview, full answer coming"],
    [
      "half way",
      demoPlan,
      { state: "fresh", refining: { done: 1, total: 2 } },
      "quick preview, full answer coming, 1 of 2 done",
    ],
    ["in full", demoPlan, { state: "fresh", model: "full-wave" }, "full-wave answer"],
    [
      "the plan moved on from a full answer",
      demoPlan,
      { state: "working", model: "full-wave", ...coming },
      "quick preview, full answer coming",
    ],
    ["raised", raised, { state: "old", model: "full-wave", ...coming }, "earlier answer, full answer coming"],
    ["raised, at first", raised, { readout: null, state: "working", ...coming }, "no preview, full answer coming"],
    [
      "buried",
      withRadials(demoPlan, { height_m: -0.05 }),
      { state: "fresh", refining: { done: 0, total: 1, part: 0.4 } },
      "quick preview, full answer coming, 40 %",
    ],
    ["stopped", demoPlan, { state: "fresh", isStopped: true }, "quick preview, full answer stopped"],
    ["none", withRadials(demoPlan, { count: 0 }), { state: "fresh" }, "quick preview only (a base without radials)"],
    ["by choice", { ...demoPlan, soilModel: "screen" }, { state: "fresh" }, "quick preview only"],
    ["a fault", demoPlan, { state: "old", model: "full-wave", fault: "it broke" }, "earlier full-wave answer"],
  ] as const)("%s", (_, plan, facts, text) => {
    expect(say(plan, facts)?.text).toBe(text);
  });

  test("with problems in the plan: an earlier answer, and of which kind", () => {
    expect(say(demoPlan, { state: "old", model: "full-wave" }, false)?.text).toBe("earlier full-wave answer");
    expect(say(demoPlan, { state: "old" }, false)?.text).toBe("earlier quick preview");
  });

  test("no two kinds share an icon: it is not left to colour or words alone", () => {
    const labels = [
      say(demoPlan, { state: "fresh", model: "full-wave" }),
      say(demoPlan, { state: "fresh", ...coming }),
      say({ ...demoPlan, soilModel: "screen" }, { state: "fresh" }),
      say(demoPlan, { state: "old" }, false),
    ];
    expect(new Set(labels.map((label) => label?.icon)).size).toBe(4);
  });

  test("where there is no soil there is nothing to tell apart; a pin over soil is enough for it", () => {
    const perfect = withGround(demoPlan, { kind: "perfect" });
    expect(say({ ...perfect, pins: [] }, { state: "fresh" })).toBeNull();
    expect(say(perfect, { state: "fresh", model: "full-wave" })?.text).toBe("full-wave answer");
  });
});
