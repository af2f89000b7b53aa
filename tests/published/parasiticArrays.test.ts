import { describe, expect, test } from "vitest";
import { makeFarField } from "../../engine/fields/makeFarField.ts";
import { type Ground, solveWires, swr, type WireSolution } from "../../engine/index.ts";
import fixture from "../fixtures/parasiticArrays.json" with { type: "json" };
import { condition } from "../support/condition.ts";
import { excess } from "../support/excess.ts";
import type { FixtureRow } from "../support/FixtureRow.ts";
import { okValue } from "../support/okValue.ts";
import { rowsOf } from "../support/rowsOf.ts";
import { sinusoidalStates } from "../support/sinusoidalStates.ts";
import { SHORT, type UprightInput, uprights } from "../support/uprights.ts";

const free: Ground = { kind: "free-space" };
const perfect: Ground = { kind: "perfect" };

/** Driven element at the origin, grounded reflector behind it (−x). */
function pair(row: FixtureRow, ground: Ground): WireSolution {
  const radius_m = condition(row, "radius_m");
  return okValue(
    solveWires(
      uprights(condition(row, "frequency_hz"), ground, [
        { length_m: condition(row, "driver_height_m"), radius_m },
        {
          length_m: condition(row, "reflector_height_m"),
          radius_m,
          x_m: -condition(row, "spacing_m"),
          termination: SHORT,
        },
      ]),
    ),
  );
}

describe("driven monopole and grounded reflector on perfect ground: impedance, gain, front-to-back", () => {
  const ids = [20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40, 42, 50, 52, 54, 56].map((n) => `4-${n}`);
  test.each(rowsOf(fixture, ...ids).map((r) => [r.id, r] as const))("row %s", (_, row) => {
    const s = pair(row, perfect);
    const { re, im } = s.ports[0]!.impedance_ohm;
    expect(excess(row, [re, im, s.gain_dBi(0, 0), s.gain_dBi(0, 0) - s.gain_dBi(0, 180)])).toBeLessThanOrEqual(1);
  });

  test.each(rowsOf(fixture, "4-60", "4-62", "4-64").map((r) => [condition(r, "frequency_hz"), r] as const))(
    "across the band, %d Hz, SWR too",
    (_, row) => {
      const s = pair(row, perfect);
      const { re, im } = s.ports[0]!.impedance_ohm;
      const found = [re, im, s.gain_dBi(0, 0), s.gain_dBi(0, 0) - s.gain_dBi(0, 180), swr(re, im, 50)];
      expect(excess(row, found)).toBeLessThanOrEqual(1);
    },
  );

  test("azimuth cut at the horizon", () => {
    const [row] = rowsOf(fixture, "4-66");
    const s = pair(row!, perfect);
    const found = (row!.conditions.azimuth_deg as number[]).map((a) => s.gain_dBi(0, a));
    expect(excess(row!, found)).toBeLessThanOrEqual(1);
  });

  test.each(rowsOf(fixture, "4-70", "4-72", "4-74", "4-76", "4-78").map((r) => [r.id, r] as const))(
    "gain ahead at low elevations, over perfect ground and four soils, row %s",
    (_, row) => {
      const sigma = row.conditions.conductivity_s_per_m;
      const ground: Ground =
        sigma === undefined
          ? perfect
          : {
              kind: "soil",
              relativePermittivity: condition(row, "relative_permittivity"),
              conductivity_SPerM: condition(row, "conductivity_s_per_m"),
            };
      const s = pair(row, ground);
      const found = (row.conditions.elevation_deg as number[]).map((e) => s.gain_dBi(e, 0));
      expect(excess(row, found)).toBeLessThanOrEqual(1);
    },
  );
});

describe("two quarter-wave monopoles under sinusoidal currents as a circuit of two meshes", () => {
  /** Gain ahead and behind over one monopole, and feed impedance, against the reactance X22 of the parasite's mesh. */
  function circuit(row: FixtureRow) {
    const radius_m = 1e-6;
    const states = sinusoidalStates(
      uprights(condition(row, "frequency_hz"), perfect, [
        { length_m: condition(row, "height_m"), radius_m },
        { length_m: condition(row, "height_m"), radius_m, x_m: -condition(row, "spacing_m") },
      ]),
    );
    const z11 = states.reaction(0, 0);
    const z21 = states.reaction(1, 0);
    const z22 = states.reaction(1, 1);
    const plane = { kind: "plane", epsRe: Number.POSITIVE_INFINITY, epsIm: 0 } as const;
    const one = makeFarField(states.segments, states.currents[0]!, states.k, plane).intensity(0, 0) / z11.re;
    return (x22: number) => {
      // I₂/I₁ = −Z₂₁/(R₂₂ + jX₂₂), Z = Z₁₁ + Z₂₁ I₂/I₁.
      const d = z22.re ** 2 + x22 ** 2;
      const ratio = { re: -(z21.re * z22.re + z21.im * x22) / d, im: -(z21.im * z22.re - z21.re * x22) / d };
      const R = z11.re + z21.re * ratio.re - z21.im * ratio.im;
      const added_X = z21.re * ratio.im + z21.im * ratio.re;
      const both = states.currents[0]!.map((v, i) => {
        const w = states.currents[1]!;
        return v + (i % 2 === 0 ? ratio.re * w[i]! - ratio.im * w[i + 1]! : ratio.re * w[i]! + ratio.im * w[i - 1]!);
      });
      const far = makeFarField(states.segments, both, states.k, plane);
      const dB = (azimuth: number) => 10 * Math.log10(far.intensity(0, azimuth) / R / one);
      return { ahead_dB: dB(0), behind_dB: dB(Math.PI), R, added_X };
    };
  }
  type Answer = ReturnType<ReturnType<typeof circuit>>;
  /** Reactance at which `good` is largest, by steps of 0.1 ohm. */
  function tuned(at: (x: number) => Answer, good: (a: Answer) => number) {
    let best = -60;
    for (let x = -60; x <= 80; x += 0.1) if (good(at(x)) > good(at(best))) best = x;
    return best;
  }

  test.each(rowsOf(fixture, "4-02", "4-04", "4-06").map((r) => [condition(r, "spacing_m"), r] as const))(
    "tuned for most gain ahead, %d wavelengths apart",
    (_, row) => {
      const at = circuit(row);
      const x = tuned(at, (a) => a.ahead_dB);
      const a = at(x);
      expect(excess(row, [x, a.ahead_dB, a.ahead_dB - a.behind_dB, a.R, a.added_X])).toBeLessThanOrEqual(1);
    },
  );

  test.each(rowsOf(fixture, "4-10", "4-12").map((r) => [condition(r, "spacing_m"), r] as const))(
    "tuned for most front-to-back, %d wavelengths apart",
    (_, row) => {
      const at = circuit(row);
      const x = tuned(at, (a) => a.ahead_dB - a.behind_dB);
      const a = at(x);
      expect(excess(row, [x, a.ahead_dB, a.ahead_dB - a.behind_dB])).toBeLessThanOrEqual(1);
    },
  );

  test.each(rowsOf(fixture, "4-16", "4-18").map((r) => [condition(r, "spacing_m"), r] as const))(
    "without net reactance, %d wavelengths apart",
    (_, row) => {
      const a = circuit(row)(condition(row, "parasite_reactance_ohm"));
      expect(excess(row, [a.ahead_dB, a.behind_dB, a.R, a.added_X])).toBeLessThanOrEqual(1);
    },
  );
});

describe("parasitic arrays of dipoles in free space, the second one fed", () => {
  /** Half-wave dipole of no thickness: 1.6409. */
  const DIPOLE_dBi = 2.1509;
  function array(row: FixtureRow, lengths: readonly number[], x: readonly number[], radius_m: number): WireSolution {
    const elements = lengths.map((length_m, i): UprightInput => {
      const element = { length_m, radius_m, x_m: x[i]! };
      return i === 1 ? element : { ...element, termination: SHORT };
    });
    return okValue(solveWires(uprights(condition(row, "frequency_hz"), free, elements)));
  }
  const lengths = (row: FixtureRow) => row.conditions.element_lengths_m as number[];
  const positions = (row: FixtureRow) => row.conditions.positions_m as number[];

  test.each(rowsOf(fixture, "4-90", "4-91", "4-92").map((r) => [lengths(r).length, r] as const))(
    "%d elements, gain over a dipole as in NBS Technical Note 688",
    (_, row) => {
      const s = array(row, lengths(row), positions(row), condition(row, "diameter_m") / 2);
      expect(excess(row, s.gain_dBi(0, 0) - DIPOLE_dBi)).toBeLessThanOrEqual(1);
    },
  );

  /*
   * Rows 4-94, 4-95 and 4-96 (12.16, 12.83, 13.41 dBi, from memory) are left out. Their elements are 1/60 to 1/70 as
   * thick as long, radius 3.4e-3 wavelength, and tuned so closely that a length wrong by 0.4 % costs 1 dB. A third
   * method, triangles on equal segments with the kernel averaged exactly over the tube, gives 12.31, 13.08 and 13.58 dBi
   * with 16 segments an element, near the printed figures, but goes on falling: 11.69, 12.27 and 12.49 dBi with 384. The
   * printed figures are those of an early current expansion of few terms. The engine gives 11.77, 12.40 and 12.65, a little
   * above the tube, as its reduced kernel should at more than three times the thickness it is meant for.
   */
  test.each(rowsOf(fixture, "4-93").map((r) => [r.id, r] as const))(
    "six elements from the optimisation by Cheng and Chen, row %s",
    (_, row) => {
      const s = array(row, lengths(row), positions(row), condition(row, "radius_m"));
      expect(excess(row, s.gain_dBi(0, 0))).toBeLessThanOrEqual(1);
    },
  );

  // Rows 4-100 and 4-102 come from 16 segments an element, where front-to-back is still 1.1 and 0.5 dB from settled; the
  // rows with a "t" are the same arrays settled by the third method, held to the same tolerance.
  test.each(rowsOf(fixture, "4-104", "4-100t", "4-102t", "4-104t").map((r) => [condition(r, "spacing_m"), r] as const))(
    "one reflector %d wavelengths behind",
    (spacing, row) => {
      const s = array(row, lengths(row), [-spacing, 0], condition(row, "radius_m"));
      const ahead = s.gain_dBi(0, 0);
      expect(excess(row, [ahead - DIPOLE_dBi, ahead - s.gain_dBi(0, 180)])).toBeLessThanOrEqual(1);
    },
  );
});
