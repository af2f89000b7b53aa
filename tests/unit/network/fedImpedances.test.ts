import { expect, test } from "vitest";
import {
  type Complex,
  drivePoints,
  type ElementBase,
  fedImpedances,
  type Plan,
  solvePlan,
} from "../../../engine/index.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";
import { okValue } from "../../support/okValue.ts";

const fed = (magnitude: number, phase_deg: number): ElementBase => ({ kind: "fed", current: { magnitude, phase_deg } });
/** Three in a row, so that one may stand by unfed. */
const plan = (...bases: readonly ElementBase[]): Plan => ({
  ...twoElements,
  elements: bases.map((base, i) => ({
    ...twoElements.elements[0]!,
    id: `e${i}`,
    forward_m: -8 * i,
    height_m: 10 + 0.2 * i,
    base,
  })),
});
const far = (a: Complex, b: Complex) => Math.hypot(a.re - b.re, a.im - b.im);
const currents: readonly Complex[] = [
  { re: 1, im: 0 },
  { re: 0, im: -0.8 },
];

test.each([
  ["none", []],
  ["an open one", [{ kind: "open" }]],
  ["a joined one", [{ kind: "joined" }]],
  ["a loaded one", [{ kind: "loaded", resistance_ohm: 3, reactance_ohm: 27 }]],
] as const)("with the currents fixed, matrix and solver agree on the feeds; beside the pair stands %s", (_, others) => {
  const pair = plan(fed(1, 0), fed(0.8, -90), ...others);
  const found = okValue(fedImpedances(pair));
  expect(found.elementIds).toEqual(["e0", "e1"]);
  const { feeds } = okValue(solvePlan(pair));
  for (const [i, point] of drivePoints(found.impedance_ohm, currents).entries())
    expect(far(point.impedance_ohm, feeds[i]!.impedance_ohm)).toBeLessThan(1e-8);
});

test("at another frequency it is the antenna there", () => {
  const pair = plan(fed(1, 0), fed(0.8, -90));
  const [low, high] = [7, 7.2].map((f) => okValue(fedImpedances(pair, f)).impedance_ohm[0]![0]!.im);
  expect(high! - low!).toBeGreaterThan(10);
});

test("a plan that cannot be solved says why", () => {
  expect(fedImpedances({ ...plan(fed(1, 0)), frequency_MHz: -7 }).ok).toBe(false);
});
