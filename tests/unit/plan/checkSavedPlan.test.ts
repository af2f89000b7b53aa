import { describe, expect, test } from "vitest";
import { checkPlan, checkSavedPlan, type SavedPlan } from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

const saved: SavedPlan = {
  ...twoElements,
  site: { heading_deg: 62, ituRegion: 1 },
  band: { label: "40 m", from_MHz: 7, to_MHz: 7.2 },
  interest: { elevation_deg: 8, rearSector_deg: 120, azimuthCutElevation_deg: 10 },
  pins: [{ id: "pin-1", name: "One vertical", plan: { ...twoElements, elements: twoElements.elements.slice(0, 1) } }],
  baseline: "pin-1",
  remark: "by the hedge",
};
const found = (candidate: unknown): string[] => {
  const result = checkSavedPlan(candidate);
  return result.ok ? [] : result.problems.map(({ where, code }) => `${where}: ${code}`).sort();
};
const pin = (part: Record<string, unknown>) => ({ ...saved, pins: [{ ...saved.pins![0], ...part }] });

describe("checkSavedPlan", () => {
  test("a good plan passes with every part and with none", () => {
    expect(checkSavedPlan(saved)).toEqual({ ok: true, value: saved });
    expect(checkSavedPlan(twoElements)).toEqual({ ok: true, value: twoElements });
  });
  test("the parts around the plan do not trouble the solver's gate", () => {
    const odd = { ...saved, site: 7, pins: "none" };
    expect(checkPlan(odd).ok).toBe(true);
    expect(found(odd)).toEqual(["baseline: unknown-pin", "pins: wrong-type", "site: wrong-type"]);
  });
  const cases: [string, unknown, string[]][] = [
    ["heading", { ...saved, site: { heading_deg: 361, ituRegion: 1 } }, ["site.heading_deg: out-of-range"]],
    ["heading below 0", { ...saved, site: { heading_deg: -1, ituRegion: 1 } }, ["site.heading_deg: out-of-range"]],
    ["region", { ...saved, site: { heading_deg: 0, ituRegion: 4 } }, ["site.ituRegion: unknown-choice"]],
    ["band reversed", { ...saved, band: { label: "", from_MHz: 7.2, to_MHz: 7 } }, ["band.to_MHz: band-order"]],
    ["band of no width", { ...saved, band: { label: "", from_MHz: 7, to_MHz: 7 } }, ["band.to_MHz: band-order"]],
    ["band beyond 60", { ...saved, band: { label: "", from_MHz: 50, to_MHz: 61 } }, ["band.to_MHz: out-of-range"]],
    [
      "interest",
      { ...saved, interest: { elevation_deg: 0, rearSector_deg: 400 } },
      [
        "interest.azimuthCutElevation_deg: missing",
        "interest.elevation_deg: out-of-range",
        "interest.rearSector_deg: out-of-range",
      ],
    ],
    ["baseline of no pin", { ...saved, baseline: "pin-2" }, ["baseline: unknown-pin"]],
    ["baseline without pins", { ...twoElements, baseline: "pin-1" }, ["baseline: unknown-pin"]],
    [
      "five pins",
      {
        ...saved,
        pins: Array(5)
          .fill(saved.pins![0])
          .map((p, i) => ({ ...p, id: `pin-${i}` })),
      },
      ["pins: too-many-pins"],
    ],
    ["two pins of one id", { ...saved, pins: [saved.pins![0], saved.pins![0]] }, ["pins[1].id: duplicate-id"]],
    ["pin without a name", pin({ name: undefined }), ["pins[0].name: missing"]],
    ["pin of a newer version", pin({ plan: { ...twoElements, version: 2 } }), ["pins[0].plan.version: newer-version"]],
    [
      "pin with bad fields",
      pin({ plan: { ...twoElements, title: 1, elements: [{ ...twoElements.elements[0], height_m: 0 }] } }),
      ["pins[0].plan.elements[0].height_m: out-of-range", "pins[0].plan.title: wrong-type"],
    ],
    ["remark", { ...saved, remark: ["x"] }, ["remark: wrong-type"]],
  ];
  test.each(cases)("%s", (_, candidate, problems) => {
    expect(found(candidate)).toEqual(problems);
  });
});
