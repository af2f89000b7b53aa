import { describe, expect, test } from "vitest";
import { buildBasis } from "../../../engine/basis/buildBasis.ts";
import { portVectors } from "../../../engine/basis/portVectors.ts";
import { C0_mPerS } from "../../../engine/constants.ts";
import {
  type Plan,
  type WireInput,
  type WireProblem,
  withElement,
  withFields,
  withRadials,
  withReflector,
  withStake,
} from "../../../engine/index.ts";
import { surroundings } from "../../../engine/kernel/surroundings.ts";
import { solveSymmetric } from "../../../engine/linalg/solveSymmetric.ts";
import { fillMatrix } from "../../../engine/matrix/fillMatrix.ts";
import { findSymmetry } from "../../../engine/matrix/findSymmetry.ts";
import { fromClasses, toClasses } from "../../../engine/matrix/symmetryClasses.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { soilAround } from "../../../engine/wires/soilAround.ts";
import { wiresFromPlan } from "../../../engine/wires/wiresFromPlan.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";

/** Wires solved for their ports in two ways: as they stand, and by classes where there is a symmetry. */
function bothWays(problem: WireProblem) {
  const { frequency_Hz, wires, ports } = problem;
  const graph = joinWires(wires, false);
  const wavelength_m = C0_mPerS / frequency_Hz;
  const { segments, portEnd } = segmentWires(wires, ports, graph, frequency_Hz, wavelength_m, soilAround(problem));
  const basis = buildBasis(segments);
  const p = portVectors(basis, portEnd);
  const P = ports.length;
  const { kernel } = surroundings(problem, 40);
  const full = solveSymmetric(fillMatrix(segments, basis, frequency_Hz, kernel), basis.count, p, P).x;
  const symmetry = findSymmetry(segments, basis, p, portEnd);
  if (!symmetry) return { symmetry, unknowns: basis.count, full, byClasses: full, apart: 0 };
  // With a store and without: pairs are found the same.
  for (const store of [undefined, new Map<string, Float64Array>()]) {
    const Z = fillMatrix(segments, basis, frequency_Hz, kernel, { store, symmetry });
    const byClasses = fromClasses(solveSymmetric(Z, symmetry.count, toClasses(p, P, symmetry), P).x, P, symmetry);
    const size = full.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
    const apart = full.reduce((most, v, i) => Math.max(most, Math.abs(v - byClasses[i]!)), 0) / size;
    if (store) return { symmetry, unknowns: basis.count, full, byClasses, apart };
    expect(apart).toBeLessThan(1e-9);
  }
  throw new RangeError("unreachable");
}

const problemOf = (plan: Plan) => okValue(wiresFromPlan(plan)).problem;
const even = withRadials(demoPlan, { count: 6, length_m: 4 });
const alone = (plan: Plan): Plan => ({ ...plan, elements: plan.elements.slice(0, 1) });
const turned = (plan: Plan): Plan =>
  withElement(plan, "reflector", (element) => ({ ...element, forward_m: -4.1, left_m: 3.3 }));
const listed = (directions: readonly number[]) =>
  withRadials(demoPlan, { each: directions.map((direction_deg) => ({ direction_deg, length_m: 4 })) });

describe("solving by classes is solving", { timeout: 60_000 }, () => {
  test.each<[string, Plan, number]>([
    ["a ring alone: one radial stands for six, beside the upright", alone(even), 3.2],
    [
      "a ring alone in soil, with a stake",
      alone(withStake(withRadials(even, { height_m: -0.05 }), { length_m: 1, diameter_mm: 12 })),
      2.5,
    ],
    ["an odd ring alone", alone(withRadials(even, { count: 5 })), 2.8],
    ["a pair: left stands for right", even, 1.6],
    ["a pair in soil", withRadials(even, { height_m: -0.05 }), 1.6],
    [
      "a pair raised, its radials stopped midway",
      withFields(withRadials(even, { height_m: 1 }), { radials: "stop", bonded: false }),
      1.6,
    ],
    ["a pair with bonded bases", withFields(even, { radials: "overlap", bonded: true }), 1.6],
    ["radials one by one, left like right", listed([30, 90, 150, -30, -90, -150]), 1.6],
  ])("%s", (_, plan, fewer) => {
    const { symmetry, unknowns, apart } = bothWays(problemOf(plan));
    expect(symmetry).not.toBeNull();
    expect(unknowns / symmetry!.count).toBeGreaterThan(fewer);
    // To the rounding of two eliminations.
    expect(apart).toBeLessThan(1e-9);
  });

  test.each<[string, Plan]>([
    ["odd fields, turned a quarter step", withRadials(even, { count: 5 })],
    ["radials one by one, unlike", listed([30, 90, 150, -30, -90])],
    [
      "one radial of another length",
      withRadials(demoPlan, {
        each: [30, -30, 150, -150].map((direction_deg, i) => ({ direction_deg, length_m: i === 3 ? 4.001 : 4 })),
      }),
    ],
    ["a pair along another line than its radials'", turned(withReflector(even))],
  ])("%s: none is claimed", (_, plan) => {
    expect(bothWays(problemOf(plan)).symmetry).toBeNull();
  });

  const pair = problemOf(even);
  /** Across the beam, 2 m behind the pair: carried into itself, end for end. */
  const across: WireInput = { id: "across", from_m: [-9, -5, 3], to_m: [-9, 5, 3], radius_m: 1e-3, segments: 10 };

  test("a wire across the plane is carried into itself, its current turned round: the middle carries none", () => {
    const { symmetry, apart } = bothWays({ ...pair, wires: [...pair.wires, across] });
    expect([...symmetry!.classOf].filter((c) => c < 0)).toHaveLength(1);
    expect(apart).toBeLessThan(1e-9);
  });

  test("a port in the middle of such a wire drives currents that have not the symmetry", () => {
    const port = { id: "odd", wire: "across", position: 0.5, termination: { kind: "short" as const } };
    expect(bothWays({ ...pair, wires: [...pair.wires, across], ports: [...pair.ports, port] }).symmetry).toBeNull();
  });

  test("one radial of another metal, or thicker, or in a sheath: none is claimed", () => {
    const last = pair.wires.at(-1)!;
    for (const change of [
      { conductivity_SPerM: 1e6 },
      { radius_m: 2 * last.radius_m },
      { insulation: { radius_m: 2 * last.radius_m, relativePermittivity: 3 } },
    ]) {
      const wires = [...pair.wires.slice(0, -1), { ...last, ...change }];
      expect(bothWays({ ...pair, wires }).symmetry).toBeNull();
    }
  });
});
