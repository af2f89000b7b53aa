import { describe, expect, test, vi } from "vitest";
import { C0_mPerS } from "../../engine/constants.ts";
import { type Ground, solveWires, type WireProblem } from "../../engine/index.ts";
import fixture from "../fixtures/aboveLossySoil.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import type { FixtureRow } from "../support/FixtureRow.ts";
import { okValue } from "../support/okValue.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { sinusoidalStates } from "../support/sinusoidalStates.ts";
import { ONE_VOLT } from "../support/uprights.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 60_000 });

const free: Ground = { kind: "free-space" };
const groundOf = (row: FixtureRow): Ground => {
  const { ground } = row.conditions;
  if (ground === "perfect") return { kind: "perfect" };
  return {
    kind: "soil",
    relativePermittivity: condition(row, "relative_permittivity"),
    conductivity_SPerM: condition(row, "conductivity_s_per_m"),
  };
};

/** An upright dipole with its middle at a height, fed there. */
const dipole = (
  frequency_Hz: number,
  ground: Ground,
  wire: { length_m: number; middle_m: number; radius_m: number; segments: number },
): WireProblem => ({
  frequency_Hz,
  ground,
  soilModel: "full-wave",
  wires: [
    {
      id: "dipole",
      from_m: [0, 0, wire.middle_m - wire.length_m / 2],
      to_m: [0, 0, wire.middle_m + wire.length_m / 2],
      radius_m: wire.radius_m,
      segments: wire.segments,
    },
  ],
  ports: [{ id: "middle", wire: "dipole", position: 0.5, termination: ONE_VOLT }],
});

/*
 * Rows of no thickness and a sinusoidal current: the engine's matrix under that current, nothing solved. At a radius of a
 * millionth of the wavelength what is left of the thickness moves the reaction by less than 0.001 ohm; 160 straight pieces
 * of a sinusoid put the reactance 0.04 ohm low, a twelfth of what the rows allow.
 */
describe("half-wave dipole of no thickness, upright over ground", () => {
  const ids = ["02", "04", "06", "08", "10", "12", "14", "16", "18", "20", "22", "24", "26"].map((n) => `7-${n}`);
  test.each(rowsOf(fixture, ...ids).map((r) => [r.id, r] as const))("%s", (_, row) => {
    const f = condition(row, "frequency_hz");
    const lambda = C0_mPerS / f;
    const wire = {
      length_m: condition(row, "length_over_lambda") * lambda,
      middle_m: condition(row, "centre_height_over_lambda") * lambda,
      radius_m: 1e-6 * lambda,
      segments: 160,
    };
    expect(excess(row, sinusoidalStates(dipole(f, groundOf(row), wire)).reaction(0, 0))).toBeLessThanOrEqual(1);
  });
});

/** (R₀ + what the ground adds)/R₀; a length of λ/200 changes it by less than 0.3 % at the least height of the rows. */
function shortDipole(row: FixtureRow, height_m: number): { re: number; im: number } {
  const f = condition(row, "frequency_hz");
  const lambda = C0_mPerS / f;
  const wire = { length_m: lambda / 200, middle_m: height_m, radius_m: 1e-6 * lambda, segments: 8 };
  const over = sinusoidalStates(dipole(f, groundOf(row), wire)).reaction(0, 0);
  const alone = sinusoidalStates(dipole(f, free, wire)).reaction(0, 0);
  return { re: over.re / alone.re, im: (over.im - alone.im) / alone.re };
}

describe("short dipole, upright over ground", () => {
  test.each(rowsOf(fixture, "7-30", "7-32").map((r) => [r.id, r] as const))(
    "closed form, perfect ground, %s",
    (_, row) => {
      // The rows are for a dipole of no length; λ/200 of it moves the large reactance near the ground by 2e-3 of itself.
      const found = shortDipole(row, condition(row, "height_m"));
      const want = row.value as { re: number; im: number };
      expect(Math.abs(found.re - want.re)).toBeLessThan(5e-4);
      expect(Math.abs(found.im - want.im)).toBeLessThan(3e-3 * Math.max(1, Math.abs(want.im)));
    },
  );

  const ids = ["40", "42", "44", "46", "48", "50", "52"].map((n) => `7-${n}`);
  test.each(rowsOf(fixture, ...ids).map((r) => [r.id, r] as const))("soil, %s", (_, row) => {
    const height_m = (condition(row, "height_over_lambda") * C0_mPerS) / condition(row, "frequency_hz");
    const found = shortDipole(row, height_m);
    const want = row.value as { re: number; im: number };
    const { rel_re, abs_im } = row.tolerance as { rel_re: number; abs_im: number };
    expect(Math.abs(found.re / want.re - 1)).toBeLessThan(rel_re);
    expect(Math.abs(found.im - want.im)).toBeLessThan(abs_im);
  });
});

describe("dipole of 2 mm wire, 20.3 m long at 7.1 MHz, solved for", () => {
  const ids = ["60", "62", "64", "66", "68", "70"].map((n) => `7-${n}`);
  test.each(rowsOf(fixture, ...ids).map((r) => [r.id, r] as const))("%s", (_, row) => {
    const length_m = condition(row, "length_m");
    const wire = {
      length_m,
      middle_m: condition(row, "lower_tip_height_m") + length_m / 2,
      radius_m: condition(row, "radius_m"),
      segments: 40,
    };
    const solved = okValue(solveWires(dipole(condition(row, "frequency_hz"), groundOf(row), wire)));
    expect(excess(row, solved.ports[0]!.impedance_ohm)).toBeLessThanOrEqual(1);
  });

  test("7-72, free space", () => {
    const row = rowsOf(fixture, "7-72")[0]!;
    const wire = {
      length_m: condition(row, "length_m"),
      middle_m: 0,
      radius_m: condition(row, "radius_m"),
      segments: 40,
    };
    const solved = okValue(solveWires(dipole(condition(row, "frequency_hz"), free, wire)));
    expect(excess(row, solved.ports[0]!.impedance_ohm)).toBeLessThanOrEqual(1);
  });
});
