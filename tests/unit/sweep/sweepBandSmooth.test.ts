import { describe, expect, test } from "vitest";
import { bandSample, type Plan, readPlan, solveWires, sweepBand, sweepBandSmooth } from "../../../engine/index.ts";
import { wiresFromPlan } from "../../../engine/wires/wiresFromPlan.ts";
import { okValue } from "../../support/okValue.ts";

const pair = (frequency_MHz: number, count: number, scale: number, ground: Plan["ground"]): Plan => ({
  format: "hindwire-plan",
  version: 1,
  title: "pair",
  frequency_MHz,
  ground,
  soilModel: "full-wave",
  elements: [0, 1].map((i) => ({
    id: i === 0 ? "driven" : "reflector",
    forward_m: i === 0 ? 0 : -5.9 * scale,
    left_m: 0,
    height_m: (i === 0 ? 7.25 : 7.6) * scale,
    diameter_mm: 1.6,
    conductor: "copper",
    base: { kind: i === 0 ? "fed" : "joined" },
    radials: { count, length_m: 3.7 * scale, height_m: 0, diameter_mm: 1.6 },
  })),
});
const average = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;

/** Largest distance between the smooth sweep's curve and direct solves between its points. */
function away_ohm(plan: Plan, from_MHz: number, to_MHz: number) {
  const band = okValue(sweepBandSmooth(plan, { from_MHz, to_MHz, points: 10, elevation_deg: 8 }));
  const solved = okValue(sweepBand(plan, { from_MHz, to_MHz, points: 10, elevation_deg: 8 }));
  let most = 0;
  for (let i = 0; i < 10; i++)
    most = Math.max(
      most,
      Math.hypot(
        band.feeds[0]!.resistance_ohm[i]! - solved.feeds[0]!.resistance_ohm[i]!,
        band.feeds[0]!.reactance_ohm[i]! - solved.feeds[0]!.reactance_ohm[i]!,
      ),
    );
  // The check is made at one frequency, through one solve fewer; twice what it found is allowed elsewhere. A ratio of two
  // fields is off by the errors of both.
  const { error_dB, errorBehind } = band.interpolated!;
  band.beam!.forward_dBi.forEach((gain, i) => {
    expect(Math.abs(gain - solved.beam!.forward_dBi[i]!), `ahead, ${i}`).toBeLessThanOrEqual(2 * error_dB! + 1e-9);
    const ratio = (b: NonNullable<typeof band.beam>) => 10 ** (-b.frontToBack_dB[i]! / 20);
    const allowed = errorBehind! + ratio(solved.beam!) * (10 ** (error_dB! / 20) - 1);
    const off = Math.abs(ratio(band.beam!) - ratio(solved.beam!));
    expect(off, `behind, ${i} of ${ratio(solved.beam!)}`).toBeLessThanOrEqual(2 * allowed + 1e-9);
  });
  return { most, ...band.interpolated! };
}

describe("sweepBandSmooth", { timeout: 120_000 }, () => {
  test.each([
    ["a narrow band over soil", pair(10.12, 6, 1, average), 10.09, 10.16],
    ["a wide band over soil", pair(3.65, 6, 2.77, average), 3.4, 4.0],
    ["a wide band over perfect ground", pair(3.65, 6, 2.77, { kind: "perfect" }), 3.4, 4.0],
    ["an octave over perfect ground", pair(10.12, 6, 1, { kind: "perfect" }), 7, 14],
  ])("%s: direct solves between the points lie within twice what the check found", (_, plan, from, to) => {
    const { most, error_ohm } = away_ohm(plan, from, to);
    expect(most).toBeLessThanOrEqual(2 * error_ohm);
  });

  test("a narrow band takes five solves, a wide one as many as bring the error down to 0.3 ohm or 1 %", () => {
    const narrow = away_ohm(pair(10.12, 2, 1, average), 10.09, 10.16);
    expect(narrow.solved_MHz).toHaveLength(5);
    const wide = away_ohm(pair(3.65, 2, 2.77, average), 3.4, 4);
    expect(wide.solved_MHz.length).toBeGreaterThan(5);
    expect(wide.error_ohm).toBeLessThan(1);
  });

  test("at the plan's own frequency a solve of the sweep is the readout's", () => {
    const plan = pair(10.12, 2, 1, average);
    const request = { azimuthCutElevation_deg: 8, pathElevation_deg: 8, rungs_deg: [8], rearSector_deg: 120 };
    expect(okValue(bandSample(plan, 10.12)).feeds).toEqual(okValue(readPlan(plan, request)).feeds);
    // Elsewhere its wires are cut as at the plan's own frequency, where more segments would make the curve step.
    const higher = { ...plan, frequency_MHz: 12 };
    const { problem } = okValue(wiresFromPlan(higher, plan.frequency_MHz));
    const sameCuts = okValue(wiresFromPlan(plan)).problem.wires.map((wire) => wire.segments);
    expect(problem.wires.map((wire) => wire.segments)).toEqual(sameCuts);
    expect(okValue(wiresFromPlan(higher)).problem.wires.map((wire) => wire.segments)).not.toEqual(sameCuts);
    expect(okValue(bandSample(plan, 12)).feeds[0]!.impedance_ohm).toEqual(
      okValue(solveWires(problem)).ports[0]!.impedance_ohm,
    );
  });

  test("at the plan's own frequency the beam of the sweep is the readout's", () => {
    const plan = pair(10.12, 4, 1, average);
    const request = { azimuthCutElevation_deg: 8, pathElevation_deg: 8, rungs_deg: [8], rearSector_deg: 120 };
    const { path } = okValue(readPlan(plan, request));
    const band = okValue(sweepBand(plan, { from_MHz: 10.12, to_MHz: 10.2, points: 2, elevation_deg: 8 }));
    expect(band.beam!.forward_dBi[0]).toBeCloseTo(path.forward_dBi, 9);
    expect(band.beam!.frontToBack_dB[0]).toBeCloseTo(path.frontToBack_dB, 9);
    const bad = sweepBand(plan, { from_MHz: 10, to_MHz: 10.2, points: 2, elevation_deg: 91 });
    expect(bad.ok ? [] : bad.problems.map((problem) => problem.code)).toEqual(["band-elevation"]);
  });

  test("a band out of order is refused in words", () => {
    const result = sweepBandSmooth(pair(10.12, 2, 1, average), { from_MHz: 11, to_MHz: 10, points: 10 });
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual(["band-order"]);
  });
});
