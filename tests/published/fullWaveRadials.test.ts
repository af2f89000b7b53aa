import { describe, expect, test, vi } from "vitest";
import {
  type Complex,
  type Plan,
  solvePlan,
  solveWires,
  type WireInput,
  type WireProblem,
} from "../../engine/index.ts";
import fixture from "../fixtures/fullWaveRadials.json" with { type: "json" };
import { okValue } from "../support/okValue.ts";
import { radialVertical } from "../support/radialVertical.ts";
import { ONE_VOLT, SHORT } from "../support/uprights.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

/*
 * Verticals on radial wires over soil, and level dipoles, against an independent full-wave solution (computed, not
 * published; see the fixture). Coarse meshes keep the test quick; what is allowed is the reference's stated error and
 * bias plus what ten to twenty segments leave: on a single vertical 0.6 ohm or 2 % in R, 1.2 ohm or 2 % in X, 0.05 dB; on
 * a pair 1 ohm or 2 %, 0.007 or 2 % of the ratio and 1.5 degrees, 0.06 dB ahead, 0.2 dB behind. Twice that for four radials
 * or fewer at 5 mm, which stand near their own resonance.
 */
type Single = (typeof fixture.single)[number];
const { frequency_hz: frequency_Hz, radius_m, elevations_deg } = fixture;

const over = (soil: readonly number[], wires: readonly WireInput[], ports: WireProblem["ports"]): WireProblem => ({
  frequency_Hz,
  soilModel: "full-wave",
  ground: { kind: "soil", relativePermittivity: soil[0]!, conductivity_SPerM: soil[1]! },
  wires,
  ports,
});
const find = <T extends { readonly id: string }>(rows: readonly T[], id: string): T => {
  const row = rows.find((r) => r.id === id);
  if (!row) throw new RangeError(`no row "${id}"`);
  return row;
};
/** Allowed: abs or rel, whichever is wider. */
const within = (found: number, want: number, abs: number, rel = 0) =>
  expect(Math.abs(found - want), `${found} against ${want}`).toBeLessThan(Math.max(abs, rel * Math.abs(want)));

function expectSingle(row: Single, got: ReturnType<typeof solveSingle>) {
  const wide = row.radials <= 4 && row.height_m <= 0.005 ? 2 : 1;
  const z = got.ports[0]!.impedance_ohm;
  within(z.re, row.Z_ohm[0]!, wide * 0.6, wide * 0.02);
  within(z.im, row.Z_ohm[1]!, wide * 1.2, wide * 0.02);
  within(got.radiatedPower_W / got.inputPower_W, row.efficiency, wide * 0.003);
  elevations_deg.forEach((e, i) => {
    within(got.gain_dBi(e, 0), row.gain_dBi_along[i]!, wide * 0.05);
    within(got.gain_dBi(e, 180 / row.radials), row.gain_dBi_between[i]!, wide * 0.05);
  });
}

function solveSingle(row: Single, uprightSegments?: number, radialSegments?: number) {
  const { wires, port } = radialVertical({
    hub_m: row.height_m,
    upright_m: row.upright_m,
    radials: row.radials,
    radial_m: row.radial_m,
    radius_m,
    ...(uprightSegments !== undefined && { uprightSegments }),
    ...(radialSegments !== undefined && { radialSegments }),
  });
  return okValue(solveWires(over(row.soil, wires, [port])));
}

describe("one vertical on radials", () => {
  test.each([
    ["lying 13/0.005 0.02 m 2 x 0.125", 20],
    ["lying 13/0.005 0.02 m 4 x 0.25", 20],
    ["lying 13/0.005 0.02 m 8 x 0.25", 14],
    ["lying 13/0.005 0.02 m 16 x 0.125", 10],
    ["lying 13/0.005 0.02 m 32 x 0.25", 10],
    ["lying 20/0.03 0.005 m 4 x 0.125", 20],
    ["lying 20/0.03 0.005 m 4 x 0.25", 20],
    ["lying 20/0.03 0.005 m 16 x 0.25", 10],
    ["raised 13/0.005 2.0 m 2 x 0.25", 20],
    ["raised 13/0.005 2.0 m 4 x 0.125", 20],
  ])("%s, 20 segments and %d a radial", (id, segments) => {
    const row = find(fixture.single, id);
    expectSingle(row, solveSingle(row, 20, segments));
  });

  test.each(["lying 13/0.005 0.02 m 2 x 0.25", "raised 13/0.005 2.0 m 4 x 0.25"])("%s, the engine's own mesh", (id) => {
    const row = find(fixture.single, id);
    expectSingle(row, solveSingle(row));
  });
});

/** a / b. */
const quotient = (a: Complex, b: Complex) => {
  const d = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / d, im: (a.im * b.re - a.re * b.im) / d };
};

test.each(fixture.pair.map((p) => [p.id, p] as const))("a vertical and a reflector on radials, %s", (_, row) => {
  const field = { radials: row.radials, radial_m: row.radial_m, radius_m, turn: 0.5 };
  const cuts = { uprightSegments: 20, radialSegments: 12 };
  const driven = radialVertical({
    id: "driven",
    hub_m: row.height_driven_m,
    upright_m: row.driven_m,
    ...field,
    ...cuts,
  });
  const reflector = radialVertical({
    id: "reflector",
    x_m: -row.spacing_m,
    hub_m: row.height_reflector_m,
    upright_m: row.reflector_m,
    termination: SHORT,
    ...field,
    ...cuts,
  });
  const ports = [driven.port, reflector.port];
  const got = okValue(solveWires(over(row.soil, [...driven.wires, ...reflector.wires], ports)));
  const z = got.ports[0]!.impedance_ohm;
  within(z.re, row.Z_ohm[0]!, 1, 0.02);
  within(z.im, row.Z_ohm[1]!, 1, 0.02);
  const ratio = quotient(got.ports[1]!.current_A, got.ports[0]!.current_A);
  within(Math.hypot(ratio.re, ratio.im), row.ratio, 0.007, 0.02);
  within((180 / Math.PI) * Math.atan2(ratio.im, ratio.re), row.ratio_deg, 1.5);
  within(got.radiatedPower_W / got.inputPower_W, row.efficiency, 0.003);
  elevations_deg.forEach((e, i) => {
    within(got.gain_dBi(e, 0), row.gain_dBi_ahead[i]!, 0.06);
    within(got.gain_dBi(e, 180), row.gain_dBi_behind[i]!, 0.2);
  });
});

test.each(fixture.dipole.map((d) => [d.id, d] as const))("a level dipole over soil %s", (_, row) => {
  const end = row.half_length_m;
  const wire: WireInput = {
    id: "dipole",
    from_m: [-end, 0, row.height_m],
    to_m: [end, 0, row.height_m],
    radius_m,
    segments: 40,
  };
  const port = { id: "middle", wire: "dipole", position: 0.5, termination: ONE_VOLT };
  const got = okValue(solveWires(over(row.soil, [wire], [port])));
  const z = got.ports[0]!.impedance_ohm;
  within(z.re, row.Z_ohm[0]!, 0.6, 0.02);
  within(z.im, row.Z_ohm[1]!, 1.2, 0.02);
  within(got.radiatedPower_W / got.inputPower_W, row.efficiency, 0.003);
  [5, 20, 30, 60, 90].forEach((e, i) => {
    within(got.gain_dBi(e, 90), row.gain_dBi_broadside[i]!, 0.05);
  });
});

test("the same vertical as a plan: what the reference says, to the plan's own coarser mesh", () => {
  const row = find(fixture.single, "raised 13/0.005 2.0 m 4 x 0.25");
  const plan: Plan = {
    format: "hindwire-plan",
    version: 1,
    title: "four raised radials",
    frequency_MHz: frequency_Hz / 1e6,
    ground: { kind: "soil", relativePermittivity: row.soil[0]!, conductivity_SPerM: row.soil[1]! },
    soilModel: "full-wave",
    elements: [
      {
        id: "vertical",
        forward_m: 0,
        left_m: 0,
        height_m: row.upright_m,
        diameter_mm: 2000 * radius_m,
        conductor: "perfect",
        base: { kind: "fed" },
        radials: { count: row.radials, length_m: row.radial_m, diameter_mm: 2000 * radius_m, height_m: row.height_m },
      },
    ],
  };
  const got = okValue(solvePlan(plan));
  within(got.feeds[0]!.impedance_ohm.re, row.Z_ohm[0]!, 0.6, 0.02);
  within(got.feeds[0]!.impedance_ohm.im, row.Z_ohm[1]!, 1.2, 0.02);
  within(got.efficiency, row.efficiency, 0.003);
  // A plan turns its radials as it likes; in azimuth this pattern varies by 0.01 dB.
  elevations_deg.forEach((e, i) => {
    within(got.gain_dBi(e, 0), row.gain_dBi_along[i]!, 0.05);
  });
});
