import { describe, expect, test } from "vitest";
import { EPS0_FPerM, ETA0_ohm } from "../../engine/constants.ts";
import { type FarGround, makeFarField } from "../../engine/fields/makeFarField.ts";
import { radiatedPower } from "../../engine/fields/radiatedPower.ts";
import { reflection } from "../../engine/fields/reflection.ts";
import fixture from "../fixtures/reflection.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import type { FixtureRow } from "../support/FixtureRow.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { sinusoidalStates } from "../support/sinusoidalStates.ts";
import { uprights } from "../support/uprights.ts";

const rad = Math.PI / 180;
/** Complex relative permittivity of a row's soil, e^{+jωt}. */
function soil(row: FixtureRow): { epsRe: number; epsIm: number } {
  const sigma = condition(row, "conductivity_s_per_m");
  const omega = 2 * Math.PI * condition(row, "frequency_hz");
  return { epsRe: condition(row, "relative_permittivity"), epsIm: -sigma / (omega * EPS0_FPerM) };
}
const out = new Float64Array(4);
function coefficient(row: FixtureRow, elevation_deg: number, which: "vertical" | "horizontal") {
  const { epsRe, epsIm } = soil(row);
  reflection(out, epsRe, epsIm, elevation_deg * rad);
  const [re, im] = which === "vertical" ? [out[0]!, out[1]!] : [out[2]!, out[3]!];
  return { size: Math.sqrt(re * re + im * im), phase_deg: Math.atan2(im, re) / rad };
}

describe("plane-wave reflection coefficients", () => {
  const ids = ["5-40", "5-42", "5-44", "5-46", "5-48"];
  test.each(rowsOf(fixture, ...ids).map((r) => [condition(r, "elevation_deg"), r] as const))(
    "vertical polarisation at %d degrees",
    (elevation, row) => {
      const c = coefficient(row, elevation, "vertical");
      expect(excess(row, [c.size, c.phase_deg])).toBeLessThanOrEqual(1);
    },
  );
  test.each(rowsOf(fixture, "5-50", "5-52").map((r) => [condition(r, "elevation_deg"), r] as const))(
    "horizontal polarisation at %d degrees",
    (elevation, row) => {
      const c = coefficient(row, elevation, "horizontal");
      expect(excess(row, [c.size, c.phase_deg])).toBeLessThanOrEqual(1);
    },
  );
});

describe("where vertical polarisation is reflected least", () => {
  const ids = [60, 62, 64, 66, 68, 70, 72, 74, 76, 78, 80].map((n) => `5-${n}`);
  test.each(rowsOf(fixture, ...ids).map((r) => [r.id, r] as const))("row %s", (_, row) => {
    let least = 0;
    for (let e = 0.005; e < 30; e += 0.005)
      if (coefficient(row, e, "vertical").size < coefficient(row, least, "vertical").size) least = e;
    const there = coefficient(row, least, "vertical");
    expect(excess(row, [least, there.size])).toBeLessThanOrEqual(1);
    expect(Math.abs(there.phase_deg + 90)).toBeLessThan(1);
  });
});

describe("quarter-wave monopole with a sinusoidal current, soil in the far field only", () => {
  function monopole(row: FixtureRow, frequency_Hz: number, ground: FarGround) {
    const height = (condition(row, "height_over_lambda") * 299_792_458) / frequency_Hz;
    const states = sinusoidalStates(
      uprights(frequency_Hz, { kind: "perfect" }, [{ length_m: height, radius_m: 1e-5 * height }]),
    );
    const input_W = 0.5 * states.reaction(0, 0).re;
    const far = makeFarField(states.segments, states.currents[0]!, states.k, ground);
    return {
      gain_dBi: (elevation_deg: number) =>
        10 * Math.log10((4 * Math.PI * far.intensity(elevation_deg * rad, 0)) / (2 * ETA0_ohm * input_W)),
      share: radiatedPower(far, true, 0, states.k * height) / input_W,
    };
  }
  const atElevations = (row: FixtureRow, m: ReturnType<typeof monopole>) =>
    (row.conditions.elevation_deg as number[]).map((e) => m.gain_dBi(e));

  const ids = [90, 92, 94, 96, 98, 100, 102, 104, 106, 108].map((n) => `5-${n}`);
  test.each(rowsOf(fixture, ...ids).map((r) => [r.id, r] as const))("gain from 3 to 30 degrees, row %s", (_, row) => {
    const m = monopole(row, condition(row, "frequency_hz"), { kind: "plane", ...soil(row) });
    expect(excess(row, atElevations(row, m))).toBeLessThanOrEqual(1);
  });

  test("gain from 3 to 30 degrees over perfect ground", () => {
    const [row] = rowsOf(fixture, "5-120");
    const m = monopole(row!, 299_792_458, { kind: "plane", epsRe: Number.POSITIVE_INFINITY, epsIm: 0 });
    expect(excess(row!, atElevations(row!, m))).toBeLessThanOrEqual(1);
  });

  test.each(rowsOf(fixture, "5-122", "5-124", "5-126").map((r) => [r.id, r] as const))(
    "largest gain, where, and the share that leaves as sky wave, row %s",
    (_, row) => {
      const m = monopole(row, condition(row, "frequency_hz"), { kind: "plane", ...soil(row) });
      let best = 5;
      for (let e = 5; e < 60; e += 0.05) if (m.gain_dBi(e) > m.gain_dBi(best)) best = e;
      expect(excess(row, [m.gain_dBi(best), best, m.share])).toBeLessThanOrEqual(1);
    },
  );
});
