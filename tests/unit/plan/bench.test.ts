import { describe, expect, test } from "vitest";
import {
  checkSavedPlan,
  decodePlanLink,
  encodePlanLink,
  limits,
  type PlanBench,
  readPlanFile,
  type SavedPlan,
  writePlanFile,
} from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";
import { okValue } from "../../support/okValue.ts";

const bench: PlanBench = {
  lead: { cable: { kind: "listed", id: "rg-58c" }, length_m: 1.5 },
  allowance: { driven_percent: 3, reflector_percent: 4, radial_percent: 0 },
  readings: [
    {
      id: "r1",
      state: "driven-alone",
      date: "2026-05-01",
      lengths_m: { driven_m: 10.5, reflector_m: 11 },
      at: "base",
      points: [{ frequency_MHz: 7.05, resistance_ohm: 45, reactance_ohm: 3.5 }],
      remark: "invented",
    },
  ],
  log: [{ id: "l1", date: "2026-05-01", time: "10:30", ground: "moist", fed: "driven", others: "open", swr: 1.2 }],
  onAir: [{ forward_dB: -12, reverse_dB: -19 }],
  asMeasured: {
    date: "2026-05-02",
    elements: [{ elementId: "driven", lengthFactor: 0.985, series_ohm: { re: -2, im: 1 } }],
    ground: { kind: "soil", relativePermittivity: 9, conductivity_SPerM: 0.002 },
    mutualScale: 1.01,
  },
  declination_deg: -3.5,
  declinationSource: "invented",
  location: { latitude_deg: 52.1, longitude_deg: 5.2 },
};
const plan: SavedPlan = { ...twoElements, bench };
const problemsOf = (changed: unknown) => {
  const checked = checkSavedPlan({ ...twoElements, bench: changed });
  return checked.ok ? [] : checked.problems.map(({ code, where }) => [code, where]);
};

test("a plan with a bench is taken, and comes back from a file and a link as it was", () => {
  expect(okValue(checkSavedPlan(plan))).toEqual(plan);
  expect(okValue(readPlanFile(writePlanFile(plan)))).toEqual(plan);
  expect(okValue(decodePlanLink(encodePlanLink(plan)))).toEqual(plan);
});

test("every part may be absent", () => {
  expect(problemsOf({})).toEqual([]);
  expect(okValue(checkSavedPlan(twoElements)).bench).toBeUndefined();
});

describe("each wrong field is named by its path, all at once", () => {
  const [reading] = bench.readings!;
  const [entry] = bench.log!;
  test.each([
    [
      "lead",
      { lead: { cable: { kind: "listed", id: "string" }, length_m: -1 } },
      [
        ["unknown-cable", "bench.lead.cable.id"],
        ["out-of-range", "bench.lead.length_m"],
      ],
    ],
    [
      "allowance",
      { allowance: { ...bench.allowance, driven_percent: 50 } },
      [["out-of-range", "bench.allowance.driven_percent"]],
    ],
    ["state", { readings: [{ ...reading, state: "sideways" }] }, [["unknown-choice", "bench.readings[0].state"]]],
    ["same id", { readings: [reading, reading] }, [["duplicate-id", "bench.readings[1].id"]]],
    ["no points", { readings: [{ ...reading, points: [] }] }, [["too-many", "bench.readings[0].points"]]],
    [
      "point",
      { readings: [{ ...reading, points: [{ frequency_MHz: 0, resistance_ohm: "x", reactance_ohm: 0 }] }] },
      [
        ["out-of-range", "bench.readings[0].points[0].frequency_MHz"],
        ["wrong-type", "bench.readings[0].points[0].resistance_ohm"],
      ],
    ],
    ["length", { readings: [{ ...reading, lengths_m: {} }] }, [["missing", "bench.readings[0].lengths_m.driven_m"]]],
    [
      "log",
      { log: [{ ...entry, ground: "boggy", swr: 0.5 }] },
      [
        ["unknown-choice", "bench.log[0].ground"],
        ["out-of-range", "bench.log[0].swr"],
      ],
    ],
    ["pairs", { onAir: [{ forward_dB: 1 }] }, [["missing", "bench.onAir[0].reverse_dB"]]],
    [
      "correction",
      {
        asMeasured: {
          ...bench.asMeasured,
          ground: { kind: "mud" },
          elements: [{ elementId: "a", lengthFactor: 9, series_ohm: {} }],
        },
      },
      [
        ["unknown-choice", "bench.asMeasured.ground.kind"],
        ["out-of-range", "bench.asMeasured.elements[0].lengthFactor"],
        ["missing", "bench.asMeasured.elements[0].series_ohm.re"],
        ["missing", "bench.asMeasured.elements[0].series_ohm.im"],
      ],
    ],
    ["declination", { declination_deg: 200 }, [["out-of-range", "bench.declination_deg"]]],
    [
      "place",
      { location: { latitude_deg: 91 } },
      [
        ["out-of-range", "bench.location.latitude_deg"],
        ["missing", "bench.location.longitude_deg"],
      ],
    ],
    ["no bench", 7, [["wrong-type", "bench"]]],
  ])("%s", (_, changed, wanted) => {
    expect(problemsOf(changed)).toEqual(wanted);
  });

  test("more entries than are kept", () => {
    const log = Array.from({ length: limits.bench.logEntries + 1 }, (_, i) => ({ ...entry, id: `${i}` }));
    expect(problemsOf({ log })).toEqual([["too-many", "bench.log"]]);
  });
});
