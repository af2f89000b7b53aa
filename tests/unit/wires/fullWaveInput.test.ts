import { describe, expect, test } from "vitest";
import { type ElementPlan, type Plan, solvePlan, solveWires, type WireInput } from "../../../engine/index.ts";
import { ONE_VOLT } from "../../support/uprights.ts";

const average = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
const wire = (id: string, from_m: WireInput["from_m"], to_m: WireInput["to_m"], radius_m = 1e-3): WireInput => ({
  id,
  from_m,
  to_m,
  radius_m,
  segments: 4,
});

/** Problems of wires over soil, the first of them fed in its middle. */
function problemsOf(wires: readonly WireInput[], frequency_Hz = 7.1e6, position = 0.5) {
  const ports = [{ id: "feed", wire: wires[0]!.id, position, termination: ONE_VOLT }];
  const r = solveWires({ frequency_Hz, soilModel: "full-wave", ground: average, wires, ports });
  return r.ok ? [] : r.problems;
}

describe("wires over soil in the full-wave model", () => {
  test.each<[string, WireInput, WireInput, string]>([
    ["crossing", wire("one", [-5, 0, 1], [5, 0, 1]), wire("two", [0.3, -5, 1], [0.3, 5, 1]), "within 0 m"],
    [
      "side by side",
      wire("one", [-5, 0, 1], [5, 0, 1]),
      wire("two", [-5, 0.0015, 1], [5, 0.0015, 1]),
      "within 0.0015 m",
    ],
    [
      "one through another's end",
      wire("one", [-5, 0, 1], [5, 0, 1]),
      wire("two", [0.4, 0, 1], [0.4, 0, 5]),
      "within 0 m",
    ],
  ])("%s: both are named, with how near they come and how near is too near", (_, one, two, near) => {
    const problems = problemsOf([one, two]);
    expect(problems.map((p) => p.code)).toEqual(["wires-touch"]);
    for (const word of ['"one"', '"two"', near, "below 0.002 m"]) expect(problems[0]!.message).toContain(word);
  });

  test("crossing with air between them is taken", () => {
    expect(problemsOf([wire("one", [-5, 0, 1], [5, 0, 1]), wire("two", [0.3, -5, 1.003], [0.3, 5, 1.003])])).toEqual(
      [],
    );
  });

  test("lower than 3 mm: which wire, how low, and the limit", () => {
    for (const [z, refused] of [
      [0.0029, true],
      [0, true],
      [-0.0029, true],
      [-0.003, false],
      [-0.05, false],
      [0.003, false],
    ] as const) {
      const problems = problemsOf([wire("low", [-5, 0, z], [5, 0, z])]);
      expect(problems.map((p) => p.code)).toEqual(refused ? ["wire-near-soil"] : []);
      if (refused) for (const word of ['"low"', `z = ${z} m`, "0.003 m"]) expect(problems[0]!.message).toContain(word);
    }
  });

  test("a level tube must lie higher than its radius; an upright one may end lower", () => {
    expect(problemsOf([wire("tube", [-5, 0, 0.019], [5, 0, 0.019], 0.02)]).map((p) => p.code)).toEqual([
      "wire-on-ground",
    ]);
    expect(problemsOf([wire("tube", [-5, 0, 0.019], [5, 0, 0.5], 0.02)]).map((p) => p.code)).toEqual([
      "wire-on-ground",
    ]);
    expect(problemsOf([wire("tube", [0, 0, 0.005], [0, 0, 10], 0.02)])).toEqual([]);
  });

  test("an upright on bare soil has nothing to be fed against", () => {
    expect(problemsOf([wire("mast", [0, 0, 0.01], [0, 0, 10])], 7.1e6, 0).map((p) => p.code)).toEqual([
      "port-free-end",
    ]);
  });

  test("too many segments, too high a frequency: the number and the limit", () => {
    const spokes = Array.from({ length: 1100 }, (_, i) =>
      wire(`w${i}`, [0, 0, 1], [9 * Math.cos(i / 180), 9 * Math.sin(i / 180), 1]),
    );
    const [large] = problemsOf(spokes);
    expect(large!.code).toBe("too-many-segments");
    expect(large!.message).toContain("4401 segments");
    expect(large!.message).toContain("4000");
    const [high] = problemsOf([wire("w", [0, 0, 1], [0, 0, 2])], 61e6);
    expect(high!.code).toBe("full-wave-frequency");
    expect(high!.message).toContain("61000000");
  });
});

const element = (id: string, place: readonly [number, number], change: Partial<ElementPlan> = {}): ElementPlan => ({
  id,
  forward_m: place[0],
  left_m: place[1],
  height_m: 10.5,
  diameter_mm: 2,
  conductor: "copper",
  base: id === "driven" ? { kind: "fed" } : { kind: "joined" },
  radials: { count: 4, length_m: 12, diameter_mm: 2, height_m: 0 },
  ...change,
});
const planOf = (...elements: readonly ElementPlan[]): Plan => ({
  format: "hindwire-plan",
  version: 1,
  title: "two verticals",
  frequency_MHz: 7.1,
  ground: average,
  soilModel: "full-wave",
  elements,
});
const outcome = (...elements: readonly ElementPlan[]) => solvePlan(planOf(...elements));

describe("plans over soil in the full-wave model", () => {
  /** Where a radial of the driven element at 135 degrees passes, 8 m out. */
  const onRadial = [-8 * Math.SQRT1_2, 8 * Math.SQRT1_2] as const;

  test("a radial through a raised element's base, or under a tube nearer than it is thick: both named", () => {
    const raised = { radials: { count: 4, length_m: 12, diameter_mm: 2, height_m: 2 } };
    for (const pair of [
      [element("driven", [0, 0], raised), element("reflector", onRadial)],
      [element("driven", [0, 0]), element("reflector", onRadial, { diameter_mm: 40 })],
    ] as const) {
      const r = outcome(...pair);
      const touching = r.ok ? [] : r.problems.filter((p) => p.code === "wires-touch");
      const message = touching.map((p) => p.message).find((m) => m.includes('"reflector"'));
      expect(message).toContain('"driven radial 2"');
      expect(message).toMatch(/within 0(\.\d{1,6})? m of each other; they touch below 0\.\d+ m/);
    }
  });

  test("tube masts on radials that lie on the soil are solved", () => {
    const tube = { diameter_mm: 40, conductor: "aluminium" as const };
    const r = outcome(element("driven", [0, 0], tube), element("reflector", [-8, 0], tube));
    expect(r.ok).toBe(true);
  });
});
