import { describe, expect, test } from "vitest";
import {
  baselineOf,
  type Plan,
  readPlan,
  readPlanFile,
  type SavedPlan,
  withElementHeight,
  withSpacing,
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

describe("back-lawn-30m does what its notes say", { timeout: 60_000 }, () => {
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
  const preview = (plan: Plan): Plan => ({ ...plan, soilModel: "screen" });
  const gained = (plan: (one: Plan) => Plan) =>
    look(plan(pair)).path.forward_dBi - look(plan(baselineOf(pair)!.plan)).path.forward_dBi;
  test("the table of the pair", () => {
    const { path, feeds } = look(pair);
    between(
      gained((one) => one),
      3,
      3.6,
    );
    between(path.frontToBack_dB, 9, 11);
    between(path.frontToRear_dB, 8, 10);
    between(feeds[0]!.impedance_ohm.re, 45, 47);
    between(feeds[0]!.impedance_ohm.im, 1, 4);
    expect(feeds[0]!.swr50).toBeLessThan(1.3);
  });
  test("the preview's column", () => {
    const { path, feeds } = look(preview(pair));
    expect(gained(preview)).toBeCloseTo(2.8, 1);
    expect(path.frontToBack_dB).toBeCloseTo(8.7, 1);
    expect(path.frontToRear_dB).toBeCloseTo(6.2, 1);
    between(feeds[0]!.impedance_ohm.re, 51.5, 53);
    between(feeds[0]!.impedance_ohm.im, 20, 22);
  });
  test.each([(one: Plan) => one, preview])("too short, too long, by both models", (by) => {
    expect(look(by(withElementHeight(pair, "reflector", 6.8))).path.frontToBack_dB).toBeLessThan(0);
    expect(look(by(withElementHeight(pair, "reflector", 8))).path.frontToBack_dB).toBeGreaterThan(5);
  });
  test("spacing forgives", () => {
    for (const spacing_m of [5.3, 6.5]) {
      const { path } = look(withSpacing(pair, spacing_m));
      between(path.frontToBack_dB, 9, 11);
      between(path.forward_dBi - look(pair).path.forward_dBi, -0.2, 0.2);
    }
  });
});
