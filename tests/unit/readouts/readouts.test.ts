import { describe, expect, test } from "vitest";
import { type Cut, type Plan, readPlan, solvePlan, sweepBand, swr } from "../../../engine/index.ts";
import { halfPowerWidth } from "../../../engine/readouts/halfPowerWidth.ts";
import { readRung } from "../../../engine/readouts/readRung.ts";
import { okValue } from "../../support/okValue.ts";

const plan: Plan = {
  format: "hindwire-plan",
  version: 1,
  title: "Two on a perfect ground",
  frequency_MHz: 7.1,
  ground: { kind: "perfect" },
  soilModel: "screen",
  elements: [0, 1, 2].map((i) => ({
    id: ["driven", "reflector", "side"][i]!,
    forward_m: [0, -6.3, -4][i]!,
    left_m: [0, 0, 7][i]!,
    height_m: [10.1, 10.6, 10.4][i]!,
    diameter_mm: [2, 25, 4][i]!,
    conductor: (["copper", "aluminium", "perfect"] as const)[i]!,
    base: ([{ kind: "fed" }, { kind: "joined" }, { kind: "loaded", resistance_ohm: 4, reactance_ohm: 60 }] as const)[
      i
    ]!,
    radials: { count: 0, length_m: 5, diameter_mm: 1.6, height_m: 0 },
  })),
};
const request = {
  azimuthCutElevation_deg: 12,
  pathElevation_deg: 7.5,
  rungs_deg: [3, 5, 10, 30],
  rearSector_deg: 120,
};

describe("swr", () => {
  test("matched, resistive, reactive and lossless loads", () => {
    expect(swr(50, 0, 50)).toBe(1);
    expect(swr(100, 0, 50)).toBeCloseTo(2, 14);
    expect(swr(25, 0, 50)).toBeCloseTo(2, 14);
    // |Γ| = √(50²/(100² + 50²)) = 1/√5.
    expect(swr(50, 50, 50)).toBeCloseTo((1 + Math.sqrt(0.2)) / (1 - Math.sqrt(0.2)), 12);
    expect(swr(50, -50, 50)).toBe(swr(50, 50, 50));
    expect(swr(75, 0, 75)).toBe(1);
    for (const r of [0, -1]) expect(swr(r, 10, 50)).toBe(Number.POSITIVE_INFINITY);
    expect(swr(Number.NaN, 0, 50)).toBeNaN();
  });
});

describe("halfPowerWidth", () => {
  const cut = (gain: (a: number) => number): Cut => {
    const angle_deg = Array.from({ length: 361 }, (_, i) => i - 180);
    return { angle_deg, gain_dBi: angle_deg.map(gain) };
  };
  test("cos² falls to half at 45 degrees on either side", () => {
    const width = halfPowerWidth(cut((a) => 7 + 20 * Math.log10(Math.abs(Math.cos((a * Math.PI) / 180)) + 1e-9)));
    expect(width!).toBeCloseTo(90, 3);
  });
  test("unequal sides add up; a straight slope is met between samples", () => {
    expect(halfPowerWidth(cut((a) => (a > 0 ? -0.5 * a : 0.25 * a)))).toBeCloseTo(10 * Math.log10(2) * (2 + 4), 10);
  });
  test("where it never falls that far there is no width, on one side as on both", () => {
    expect(halfPowerWidth(cut(() => 4))).toBeNull();
    expect(halfPowerWidth(cut((a) => (a > 0 ? -a : 0)))).toBeNull();
  });
  test("a null is an edge", () => {
    expect(halfPowerWidth(cut((a) => (Math.abs(a) < 30 ? 0 : Number.NEGATIVE_INFINITY)))).toBe(60);
  });
});

describe("readRung", () => {
  test("the loudest direction of the sector, and not a louder one outside it", () => {
    const asked: number[] = [];
    const lobes = (elevation: number, azimuth: number) => {
      asked.push(azimuth);
      expect(elevation).toBe(9);
      const a = ((azimuth % 360) + 360) % 360;
      // −3 dB ahead of nothing at 150 and at 215 degrees; much louder just outside the sector.
      if (a < 119.9 || a > 240.1) return 6;
      return -12 - Math.min(Math.abs(a - 150), Math.abs(a - 216) - 0.5);
    };
    const rung = readRung(lobes, 9, 120);
    expect(rung.forward_dBi).toBe(6);
    expect(rung.back_dBi).toBe(-12 - 30);
    expect(rung.worstRearAzimuth_deg).toBe(-144);
    expect(rung.worstRear_dBi).toBeCloseTo(-11.5, 12);
    expect(rung.frontToBack_dB).toBeCloseTo(48, 12);
    expect(rung.frontToRear_dB).toBeCloseTo(17.5, 12);
    expect(Math.min(...asked.filter((a) => a !== 0))).toBeGreaterThanOrEqual(120);
  });

  test("both edges of the sector are looked at", () => {
    const edge = (at: number) => (_: number, azimuth: number) => (Math.abs(azimuth - at) < 1e-9 ? 0 : -20);
    expect(readRung(edge(135), 5, 90).worstRearAzimuth_deg).toBe(135);
    expect(readRung(edge(225), 5, 90).worstRearAzimuth_deg).toBe(-135);
  });

  test("of a mirrored pattern one side is asked, with the same answer", () => {
    const gain = (_: number, azimuth: number) => -Math.abs(Math.abs(180 - azimuth) - 22);
    const asked: number[] = [];
    const once = (elevation: number, azimuth: number) => {
      asked.push(azimuth);
      return gain(elevation, azimuth);
    };
    for (const sector of [0, 90, 120, 359]) expect(readRung(once, 5, sector, true)).toEqual(readRung(gain, 5, sector));
    expect(Math.max(...asked)).toBe(180);
    expect(readRung(gain, 5, 120).worstRearAzimuth_deg).toBeCloseTo(158, 9);
  });

  test("no sector is straight back, the whole circle is every direction", () => {
    const gain = (_: number, azimuth: number) => Math.cos((azimuth * Math.PI) / 180);
    expect(readRung(gain, 5, 0)).toMatchObject({ worstRear_dBi: -1, worstRearAzimuth_deg: 180 });
    expect(readRung(gain, 5, 360).worstRear_dBi).toBeCloseTo(1, 12);
  });
});

describe("one plan read in every way", () => {
  const solution = okValue(solvePlan(plan));
  const readout = okValue(readPlan(plan, request));

  test("readPlan and solvePlan say the same", () => {
    expect(readout.feeds).toEqual(solution.feeds);
    expect(readout.baseCurrents).toEqual(solution.baseCurrents);
    expect(readout.efficiency).toBe(solution.efficiency);
    expect(readout.notes).toEqual(solution.notes);
    expect(solution.feeds.map((f) => f.elementId)).toEqual(["driven"]);
    expect(solution.baseCurrents[0]!.current).toEqual({ re: 1, im: 0 });
  });

  test("cuts hold the gain in the directions they name", () => {
    const { elevationCut: e, azimuthCut: a } = readout;
    expect([e.angle_deg.length, a.angle_deg.length]).toEqual([e.gain_dBi.length, a.gain_dBi.length]);
    for (const [i, angle] of e.angle_deg.entries()) {
      const want = angle <= 90 ? solution.gain_dBi(angle, 0) : solution.gain_dBi(180 - angle, 180);
      if (angle !== 90) expect(e.gain_dBi[i]!).toBeCloseTo(want, 9);
      else expect(e.gain_dBi[i]!).toBeLessThan(-250);
    }
    for (const [i, angle] of a.angle_deg.entries()) expect(a.gain_dBi[i]!).toBeCloseTo(solution.gain_dBi(12, angle), 9);
    expect([e.angle_deg[0], e.angle_deg.at(-1), a.angle_deg[0], a.angle_deg.at(-1)]).toEqual([0, 180, -180, 180]);
    // The odd one out stands to the left, so the two sides differ: azimuth has a sense.
    expect(Math.abs(a.gain_dBi[180 + 60]! - a.gain_dBi[180 - 60]!)).toBeGreaterThan(0.1);
  });

  test("uprights along the beam: asked on one side, they have the answers of both", () => {
    const inLine = { ...plan, elements: plan.elements.slice(0, 2) };
    const { gain_dBi } = okValue(solvePlan(inLine));
    const { azimuthCut, ladder } = okValue(readPlan(inLine, request));
    for (const [i, angle] of azimuthCut.angle_deg.entries())
      expect(Math.abs(azimuthCut.gain_dBi[i]! - gain_dBi(12, angle)), `azimuth ${angle}`).toBeLessThan(1e-11);
    for (const rung of ladder) {
      const both = readRung(gain_dBi, rung.elevation_deg, request.rearSector_deg);
      expect(rung.worstRearAzimuth_deg).toBe(both.worstRearAzimuth_deg);
      expect(rung.worstRear_dBi).toBeCloseTo(both.worstRear_dBi, 11);
    }
  });

  test("ladder and path are rungs of that gain, worst within the sector", () => {
    expect(readout.ladder.map((r) => r.elevation_deg)).toEqual(request.rungs_deg);
    for (const r of [...readout.ladder, readout.path]) {
      expect(r.forward_dBi).toBeCloseTo(solution.gain_dBi(r.elevation_deg, 0), 9);
      expect(r.back_dBi).toBeCloseTo(solution.gain_dBi(r.elevation_deg, 180), 9);
      let worst = Number.NEGATIVE_INFINITY;
      for (let az = 120; az <= 240; az += 0.25) worst = Math.max(worst, solution.gain_dBi(r.elevation_deg, az));
      expect(worst - r.worstRear_dBi).toBeGreaterThanOrEqual(-1e-9);
      expect(worst - r.worstRear_dBi).toBeLessThan(0.01);
    }
    expect(readout.path.elevation_deg).toBe(7.5);
    expect(readout.halfPowerWidth_deg).toBe(halfPowerWidth(readout.azimuthCut));
  });

  test("a sweep is one solution after another", () => {
    const band = okValue(sweepBand(plan, { from_MHz: 7, to_MHz: 7.2, points: 3 }));
    expect(band.frequency_MHz).toEqual([7, 7.1, 7.2].map((f) => expect.closeTo(f, 12)));
    for (const [i, frequency_MHz] of band.frequency_MHz.entries()) {
      const [feed] = okValue(solvePlan({ ...plan, frequency_MHz })).feeds;
      expect(band.feeds).toHaveLength(1);
      expect(band.feeds[0]!.resistance_ohm[i]).toBe(feed!.impedance_ohm.re);
      expect(band.feeds[0]!.reactance_ohm[i]).toBe(feed!.impedance_ohm.im);
      expect(band.feeds[0]!.swr50[i]).toBe(feed!.swr50);
      expect(feed!.swr50).toBe(swr(feed!.impedance_ohm.re, feed!.impedance_ohm.im, 50));
    }
  });

  test("a band that runs backwards, or with no points, is a problem", () => {
    const codes = (from_MHz: number, to_MHz: number, points: number) => {
      const r = sweepBand(plan, { from_MHz, to_MHz, points });
      return r.ok ? [] : r.problems.map((p) => p.code);
    };
    expect(codes(7.2, 7, 5)).toEqual(["band-order"]);
    expect(codes(7, 7, 5)).toEqual(["band-order"]);
    expect(codes(0, 7, 5)).toEqual(["band-order"]);
    expect(codes(Number.NaN, 7, 5)).toEqual(["band-order"]);
    for (const n of [1, 402, 2.5, Number.NaN]) expect(codes(7, 7.2, n)).toEqual(["band-points"]);
  });

  test("two fed with currents: each feed in plan order, currents as asked", () => {
    const [a, b] = plan.elements;
    const phased: Plan = {
      ...plan,
      elements: [
        { ...a!, base: { kind: "fed", current: { magnitude: 2, phase_deg: 30 } } },
        { ...b!, base: { kind: "fed", current: { magnitude: 1, phase_deg: -60 } } },
      ],
    };
    const s = okValue(solvePlan(phased));
    expect(s.feeds.map((f) => f.elementId)).toEqual(["driven", "reflector"]);
    // 0.5 at −90 degrees from the first.
    expect(s.baseCurrents[1]!.current.re).toBeCloseTo(0, 12);
    expect(s.baseCurrents[1]!.current.im).toBeCloseTo(-0.5, 12);
  });
});
