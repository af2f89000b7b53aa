import { describe, expect, test } from "vitest";
import {
  baselineOf,
  type Plan,
  readPlan,
  readPlanFile,
  type SavedPlan,
  withElementHeight,
  withRadials,
  writePlanFile,
} from "../../../engine/index.ts";

const plans = import.meta.glob<string>("../../../demo-data/*.json", { query: "?raw", import: "default", eager: true });
const notes = import.meta.glob<string>("../../../demo-data/*.md", { query: "?raw", import: "default", eager: true });

const read = (text: string): SavedPlan => {
  const result = readPlanFile(text);
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join("\n"));
  return result.value;
};

test("there is a demonstration plan", () => {
  expect(Object.keys(plans).length).toBeGreaterThan(0);
});

describe.each(Object.entries(plans))("%s", (file, text) => {
  test("reads, and is as the page itself would write it", () => {
    expect(writePlanFile(read(text))).toBe(text);
  });
  test("says that it is invented, in title and remark and in every pin's title", () => {
    const plan = read(text);
    for (const said of [plan.title, plan.remark, ...(plan.pins ?? []).map((pin) => pin.plan.title)])
      expect(said).toMatch(/invented/i);
  });
  test("has its notes beside it: what to notice, what to expect, and that it is invented", () => {
    const beside = notes[file.replace(/json$/, "md")];
    for (const part of [/invented/i, /^## What to notice$/m, /^## What to expect$/m, /power lines/])
      expect(beside).toMatch(part);
  });
  test("compares with a baseline", () => {
    expect(baselineOf(read(text))?.name).toBe("One vertical");
  });
});

describe("back-lawn-30m does what its notes say", () => {
  const pair = read(plans["../../../demo-data/back-lawn-30m.json"]!);
  const look = (plan: Plan) => {
    const result = readPlan(plan, {
      azimuthCutElevation_deg: 8,
      pathElevation_deg: 8,
      rungs_deg: [8],
      rearSector_deg: 120,
    });
    if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join("\n"));
    return result.value;
  };
  const between = (value: number, least: number, most: number) => {
    expect(value).toBeGreaterThan(least);
    expect(value).toBeLessThan(most);
  };
  test("the table of the pair", () => {
    const { path, feeds } = look(pair);
    between(path.forward_dBi - look(baselineOf(pair)!.plan).path.forward_dBi, 2.5, 4);
    between(path.frontToBack_dB, 8, 12);
    between(path.frontToRear_dB, 7, 10);
    between(feeds[0]!.impedance_ohm.re, 40, 52);
  });
  test("too short, too long, without radials", () => {
    expect(look(withElementHeight(pair, "reflector", 6.8)).path.frontToBack_dB).toBeLessThan(0);
    expect(look(withElementHeight(pair, "reflector", 7.8)).path.frontToBack_dB).toBeGreaterThan(5);
    expect(look(withRadials(pair, { count: 0 }, "reflector")).path.frontToBack_dB).toBeLessThan(4);
  });
});
