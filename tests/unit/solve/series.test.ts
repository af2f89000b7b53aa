import { expect, test } from "vitest";
import { fedImpedances, type Plan, readPlan, solvePlan } from "../../../engine/index.ts";
import { solvePlanProblem } from "../../../engine/solve/solvePlanProblem.ts";
import { arraySample } from "../../../engine/sweep/trial/arraySample.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";
import { okValue } from "../../support/okValue.ts";

const series = { resistance_ohm: 8, reactance_ohm: -5 };
const request = { azimuthCutElevation_deg: 10, pathElevation_deg: 10, rungs_deg: [10], rearSector_deg: 120 };
const on = (plan: Plan, ...which: readonly number[]): Plan => ({
  ...plan,
  elements: plan.elements.map((e, i) => (which.includes(i) ? { ...e, baseSeries: series } : e)),
});

/** In free space they are wires, and few are quicker. */
function withFewRadials(plan: Plan): Plan {
  return { ...plan, elements: plan.elements.map((e) => ({ ...e, radials: { ...e.radials, count: 4 } })) };
}

test.each([
  ["perfect ground", { ...twoElements, ground: { kind: "perfect" } } as Plan],
  ["soil, preview", twoElements as Plan],
  ["free space", withFewRadials({ ...twoElements, ground: { kind: "free-space" } })],
])("in series with a base, %s", (_, plan) => {
  const read = (of: Plan) => okValue(readPlan(of, request));
  const bare = read(plan);

  // A fed base: the feed has it on top, the currents and the shape are as they were, and gain falls by the share lost.
  const fed = read(on(plan, 0));
  expect(fed.feeds[0]!.impedance_ohm.re).toBeCloseTo(bare.feeds[0]!.impedance_ohm.re + 8, 9);
  expect(fed.feeds[0]!.impedance_ohm.im).toBeCloseTo(bare.feeds[0]!.impedance_ohm.im - 5, 9);
  expect(fed.baseCurrents[1]!.current.re).toBeCloseTo(bare.baseCurrents[1]!.current.re, 9);
  const share = bare.feeds[0]!.impedance_ohm.re / fed.feeds[0]!.impedance_ohm.re;
  expect(fed.path.forward_dBi).toBeCloseTo(bare.path.forward_dBi + 10 * Math.log10(share), 9);
  expect(fed.path.frontToBack_dB).toBeCloseTo(bare.path.frontToBack_dB, 9);
  expect(fed.efficiency).toBeCloseTo(bare.efficiency * share, 9);

  // A joined base: the same as a load of that size.
  const joined = read(on(plan, 1));
  const load = { kind: "loaded", ...series } as const;
  const loaded = read({ ...plan, elements: plan.elements.map((e, i) => (i ? { ...e, base: load } : e)) });
  expect(joined.feeds[0]!.impedance_ohm.re).toBeCloseTo(loaded.feeds[0]!.impedance_ohm.re, 9);
  expect(joined.path.frontToBack_dB).toBeCloseTo(loaded.path.frontToBack_dB, 9);
  expect(joined.efficiency).toBeCloseTo(loaded.efficiency, 9);

  // Power is accounted for where no soil takes any.
  expect(joined.notes.concat(fed.notes).map((n) => n.code)).not.toContain("power-balance");
  const { solved } = okValue(solvePlanProblem(on(plan, 0, 1)));
  if (plan.ground.kind !== "soil")
    expect((solved.radiatedPower_W + solved.conductorLoss_W + solved.loadLoss_W) / solved.inputPower_W).toBeCloseTo(
      1,
      4,
    );

  // The other ways to the port network say the same.
  const both = on(plan, 0, 1);
  const z = okValue(solvePlan(both)).feeds[0]!.impedance_ohm;
  expect(okValue(fedImpedances(both)).impedance_ohm[0]![0]!.re).toBeCloseTo(z.re, 8);
  const directions = { elevations_deg: [], azimuths_deg: [] };
  const sample = (of: Plan) =>
    okValue(arraySample({ plan: of, frequency_MHz: of.frequency_MHz, directions })).impedance_ohm;
  const added = sample(both).map((v, i) => v - sample(plan)[i]!);
  [8, -5, 0, 0, 0, 0, 8, -5].forEach((wanted, i) => {
    expect(added[i]).toBeCloseTo(wanted, 9);
  });
});

test("a series that is no number is refused at its field", () => {
  const plan = { ...twoElements, elements: [{ ...twoElements.elements[0]!, baseSeries: { resistance_ohm: "8" } }] };
  const solved = solvePlan(plan as unknown as Plan);
  expect(solved.ok ? [] : solved.problems.map((p) => [p.code, p.where])).toEqual([
    ["wrong-type", "elements[0].baseSeries.resistance_ohm"],
    ["missing", "elements[0].baseSeries.reactance_ohm"],
  ]);
});
