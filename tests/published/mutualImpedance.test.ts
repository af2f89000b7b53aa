import { describe, expect, test } from "vitest";
import { makeFarField } from "../../engine/fields/makeFarField.ts";
import { type Ground, portImpedances, type WireProblem } from "../../engine/index.ts";
import fixture from "../fixtures/mutualImpedance.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import { okValue } from "../support/okValue.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { sinusoidalStates } from "../support/sinusoidalStates.ts";
import { uprights } from "../support/uprights.ts";

/** One metre is one wavelength. */
const FREQUENCY_HZ = 299_792_458;
const HAIR_m = 1e-6;
const free: Ground = { kind: "free-space" };
const perfect: Ground = { kind: "perfect" };

const dipoles = (spacing_m: number) =>
  sinusoidalStates(
    uprights(FREQUENCY_HZ, free, [
      { length_m: 0.5, radius_m: HAIR_m },
      { length_m: 0.5, radius_m: HAIR_m, x_m: spacing_m },
    ]),
  );
const monopoles = (spacing_m: number) =>
  sinusoidalStates(
    uprights(FREQUENCY_HZ, perfect, [
      { length_m: 0.25, radius_m: HAIR_m },
      { length_m: 0.25, radius_m: HAIR_m, x_m: spacing_m },
    ]),
  );

describe("half-wave dipoles side by side under sinusoidal currents: the engine's matrix, nothing solved", () => {
  const ids = ["01", "02", "04", "05", "06", "08", "09", "10", "12", "13", "14", "16", "17", "18", "20"];
  const rows = rowsOf(fixture, ...ids.map((n) => `3-${n}`));
  test.each(rows.map((r) => [condition(r, "spacing_m"), r] as const))("%d wavelengths apart", (spacing, row) => {
    expect(excess(row, dipoles(spacing).reaction(0, 1))).toBeLessThanOrEqual(1);
    const half = monopoles(spacing).reaction(1, 0);
    expect(excess(row, { re: 2 * half.re, im: 2 * half.im })).toBeLessThanOrEqual(1);
  });
});

describe("half-wave dipoles in one line under sinusoidal currents", () => {
  test.each(rowsOf(fixture, "3-30", "3-32").map((r) => [condition(r, "centre_offset_m"), r] as const))(
    "centres %d wavelengths apart",
    (offset, row) => {
      const wire = (id: string, z: number) =>
        ({ id, from_m: [0, 0, z - 0.25], to_m: [0, 0, z + 0.25], radius_m: HAIR_m }) as const;
      const problem: WireProblem = {
        frequency_Hz: FREQUENCY_HZ,
        ground: free,
        wires: [wire("low", 0), wire("high", offset)],
        // Ports put a node at each centre, where the sinusoid has its kink.
        ports: ["low", "high"].map((id) => ({ id, wire: id, position: 0.5, termination: { kind: "short" } })),
      };
      expect(excess(row, sinusoidalStates(problem).reaction(0, 1))).toBeLessThanOrEqual(1);
    },
  );
});

describe("two dipoles of round wire, the currents solved for", () => {
  const pair = (spacing_m: number, length_m: number, radius_m: number) =>
    okValue(
      portImpedances(
        uprights(FREQUENCY_HZ, free, [
          { length_m, radius_m },
          { length_m, radius_m, x_m: spacing_m },
        ]),
      ),
    );
  const found = (row: Parameters<typeof condition>[0]) =>
    pair(condition(row, "spacing_m"), condition(row, "length_m"), condition(row, "radius_m"));

  test.each(rowsOf(fixture, "3-40", "3-42", "3-44", "3-46", "3-48").map((r) => [r.id, r] as const))(
    "self impedance with the other open, row %s",
    (_, row) => {
      expect(excess(row, found(row)[0]![0]!)).toBeLessThanOrEqual(1);
    },
  );
  test.each(rowsOf(fixture, "3-41", "3-45", "3-49").map((r) => [r.id, r] as const))(
    "mutual impedance, row %s",
    (_, row) => {
      expect(excess(row, found(row)[1]![0]!)).toBeLessThanOrEqual(1);
    },
  );
});

describe("two elements fed with currents", () => {
  test("a quarter wave and a quarter period apart: impedances, gain, nothing backwards", () => {
    const [lead, lag, gain] = rowsOf(fixture, "3-60", "3-61", "3-62");
    const pair = monopoles(condition(lead!, "spacing_m"));
    const z11 = pair.reaction(0, 0);
    const z12 = pair.reaction(0, 1);
    // I₂ = −j I₁: Z₁ = Z₁₁ − j Z₁₂ and Z₂ = Z₂₂ + j Z₁₂.
    expect(excess(lead!, { re: z11.re + z12.im, im: z11.im - z12.re })).toBeLessThanOrEqual(1);
    expect(excess(lag!, { re: z11.re - z12.im, im: z11.im + z12.re })).toBeLessThanOrEqual(1);

    const quarterLate = pair.currents[1]!.map((_, i, a) => (i % 2 === 0 ? a[i + 1]! : -a[i - 1]!));
    const both = pair.currents[0]!.map((v, i) => v + quarterLate[i]!);
    const plane = { kind: "plane", epsRe: Number.POSITIVE_INFINITY, epsIm: 0 } as const;
    const two = makeFarField(pair.segments, both, pair.k, plane);
    const one = makeFarField(pair.segments, pair.currents[0]!, pair.k, plane);
    // The input of the two is 2 R₁₁, since R₁₂ cancels; the second stands ahead (+x), so the beam points there.
    const over = two.intensity(0, 0) / (2 * z11.re) / (one.intensity(0, 0) / z11.re);
    expect(excess(gain!, 10 * Math.log10(over))).toBeLessThanOrEqual(1);
    expect(two.intensity(0, Math.PI)).toBeLessThan(1e-12 * two.intensity(0, 0));
  });

  test("in opposition: gain over one, and what is left of the resistance", () => {
    const [wide, close] = rowsOf(fixture, "3-64", "3-65");
    const gainOverOne = (spacing: number) => {
      const pair = dipoles(spacing);
      const both = pair.currents[0]!.map((v, i) => v - pair.currents[1]![i]!);
      const two = makeFarField(pair.segments, both, pair.k, { kind: "none" });
      const one = makeFarField(pair.segments, pair.currents[0]!, pair.k, { kind: "none" });
      const left_ohm = pair.reaction(0, 0).re - pair.reaction(0, 1).re;
      const over = two.intensity(0, 0) / (2 * left_ohm) / (one.intensity(0, 0) / pair.reaction(0, 0).re);
      return { dB: 10 * Math.log10(over), left_ohm };
    };
    expect(excess(wide!, gainOverOne(0.5).dB)).toBeLessThanOrEqual(1);
    const near = gainOverOne(condition(close!, "spacing_m"));
    expect(excess(close!, [near.dB, near.left_ohm])).toBeLessThanOrEqual(1);
  });
});
