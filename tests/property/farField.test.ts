import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { EPS0_FPerM, ETA0_ohm } from "../../engine/constants.ts";
import { type FarGround, makeFarField } from "../../engine/fields/makeFarField.ts";
import { radiatedPower } from "../../engine/fields/radiatedPower.ts";
import { reflection } from "../../engine/fields/reflection.ts";
import { sinCosIntegral } from "../../engine/special/sinCosIntegral.ts";
import { joinWires } from "../../engine/wires/joinWires.ts";
import type { Segments } from "../../engine/wires/Segments.ts";
import { segmentWires } from "../../engine/wires/segmentWires.ts";
import { between } from "../support/between.ts";
import { METRE_WAVE_Hz, randomWires } from "../support/randomWires.ts";

vi.setConfig({ testTimeout: 30_000 });

const k = 2 * Math.PI;
const settings = { seed: 1888, numRuns: 25 } as const;
const rad = Math.PI / 180;

type Complex3 = Float64Array;

/** ∫ I e^{jk r̂·r} ds over all segments as a vector, by 64 midpoints a segment: Re, Im of x, y, z. */
function radiationVector(
  segments: Segments,
  currents: Float64Array,
  r: readonly number[],
  mirrored: boolean,
): Complex3 {
  const out = new Float64Array(6);
  const POINTS = 64;
  for (let s = 0; s < segments.count; s++)
    for (let i = 0; i < POINTS; i++) {
      const u = (i + 0.5) / POINTS;
      const step = segments.length[s]! / POINTS;
      const at = (c: number) => segments.start[3 * s + c]! + u * segments.length[s]! * segments.tangent[3 * s + c]!;
      const phase = k * (r[0]! * at(0) + r[1]! * at(1) + (mirrored ? -1 : 1) * r[2]! * at(2));
      const re = currents[4 * s]! * (1 - u) + currents[4 * s + 2]! * u;
      const im = currents[4 * s + 1]! * (1 - u) + currents[4 * s + 3]! * u;
      const [c, v] = [Math.cos(phase), Math.sin(phase)];
      for (let axis = 0; axis < 3; axis++) {
        const t = segments.tangent[3 * s + axis]! * step;
        out[2 * axis]! += t * (re * c - im * v);
        out[2 * axis + 1]! += t * (re * v + im * c);
      }
    }
  return out;
}

/** −jkη₀/4π times the part of a radiation vector along a unit vector. */
function along(n: Complex3, unit: readonly number[]): [number, number] {
  const scale = (k * ETA0_ohm) / (4 * Math.PI);
  const re = n[0]! * unit[0]! + n[2]! * unit[1]! + n[4]! * unit[2]!;
  const im = n[1]! * unit[0]! + n[3]! * unit[1]! + n[5]! * unit[2]!;
  return [scale * im, -scale * re];
}

const times = ([a, b]: [number, number], [c, d]: [number, number]): [number, number] => [a * c - b * d, a * d + b * c];

function expectBruteForce(
  segments: Segments,
  currents: Float64Array,
  ground: FarGround,
  elevation: number,
  azimuth: number,
) {
  const [ca, sa, cp, sp] = [Math.cos(elevation), Math.sin(elevation), Math.cos(azimuth), Math.sin(azimuth)];
  const up = [ca * cp, ca * sp, sa];
  const direct = radiationVector(segments, currents, up, false);
  let theta = along(direct, [sa * cp, sa * sp, -ca]);
  let phi = along(direct, [-sp, cp, 0]);
  if (ground.kind === "plane") {
    // The downward ray leaves the wires at −α, is reflected, and arrives with the fields turned as on a mirror.
    const g = reflection(new Float64Array(4), ground.epsRe, ground.epsIm, elevation);
    const down = radiationVector(segments, currents, up, true);
    const dt = times(along(down, [-sa * cp, -sa * sp, -ca]), [g[0]!, g[1]!]);
    const dp = times(along(down, [-sp, cp, 0]), [g[2]!, g[3]!]);
    theta = [theta[0] + dt[0], theta[1] + dt[1]];
    phi = [phi[0] + dp[0], phi[1] + dp[1]];
  }
  const got = makeFarField(segments, currents, k, ground).field(new Float64Array(4), elevation, azimuth);
  const size = (k * ETA0_ohm * currents.reduce((m, v) => Math.max(m, Math.abs(v)), 0)) / (4 * Math.PI);
  [...theta, ...phi].forEach((want, i) => {
    // Midpoints leave (kΔ)²/24, Δ a 64th of a segment.
    expect(Math.abs(got[i]! - want)).toBeLessThan(2e-5 * size);
  });
}

const grounds: [string, fc.Arbitrary<FarGround>][] = [
  ["free space", fc.constant<FarGround>({ kind: "none" })],
  ["perfect ground", fc.constant<FarGround>({ kind: "plane", epsRe: Number.POSITIVE_INFINITY, epsIm: 0 })],
  [
    "soil",
    fc.tuple(between(1.5, 80), between(-2000, 0)).map(([epsRe, epsIm]): FarGround => ({ kind: "plane", epsRe, epsIm })),
  ],
];

describe("far field of any wires with any currents against a plain sum", () => {
  test.each(grounds)("%s", (_, ground) => {
    // Upright, level and leaning segments are summed in different ways: all of them must come up.
    const kinds = new Set<string>();
    fc.assert(
      fc.property(
        randomWires("perfect"),
        ground,
        between(0.5, 89).map((x) => x * rad),
        between(-180, 180).map((x) => x * rad),
        fc.integer(),
        (problem, g, elevation, azimuth, seed) => {
          const { wires, ports } = problem;
          const { segments } = segmentWires(wires, ports, joinWires(wires, true), METRE_WAVE_Hz, 1);
          // Currents need not be those of an antenna: each end gets its own.
          const currents = Float64Array.from({ length: 4 * segments.count }, (_v, i) =>
            Math.sin(1.7 * i * i + (seed % 1000)),
          );
          for (let i = 0; i < segments.count; i++) {
            const rise = Math.abs(segments.tangent[3 * i + 2]!);
            kinds.add(rise > 1 - 1e-12 ? "upright" : rise < 1e-12 ? "level" : "leaning");
          }
          expectBruteForce(segments, currents, g, elevation, azimuth);
        },
      ),
      settings,
    );
    expect([...kinds].sort((a, b) => a.localeCompare(b))).toEqual(["leaning", "level", "upright"]);
  });

  test("nothing below the horizon of a ground", () => {
    const [problem] = fc.sample(randomWires("perfect"), { seed: 3, numRuns: 1 });
    const { segments } = segmentWires(problem!.wires, [], joinWires(problem!.wires, true), METRE_WAVE_Hz, 1);
    const currents = new Float64Array(4 * segments.count).fill(1);
    const far = makeFarField(segments, currents, k, { kind: "plane", epsRe: 13, epsIm: -12 });
    expect(far.intensity(-1e-6, 0.3)).toBe(0);
    expect(far.intensity(0.2, 0.3)).toBeGreaterThan(0);
  });
});

/** One upright, centred on z = middle, with the current given as a function of height. */
function upright(length: number, middle: number, current: (z: number) => number, segments: number) {
  const wire = {
    id: "w",
    from_m: [0, 0, middle - length / 2] as const,
    to_m: [0, 0, middle + length / 2] as const,
    radius_m: 1e-9,
    segments,
  };
  const cut = segmentWires([wire], [], joinWires([wire], false), METRE_WAVE_Hz, 1).segments;
  const currents = new Float64Array(4 * cut.count);
  for (let s = 0; s < cut.count; s++) {
    currents[4 * s] = current(cut.start[3 * s + 2]!);
    currents[4 * s + 2] = current(cut.start[3 * s + 2]! + cut.length[s]!);
  }
  return { segments: cut, currents };
}

describe("radiated power against closed forms", () => {
  test("short element with an even current: (πη₀/3)(l/λ)², and half of it through half a sphere", () => {
    const l = 1e-3;
    const { segments, currents } = upright(l, 0, () => 1, 1);
    const far = makeFarField(segments, currents, k, { kind: "none" });
    const want = (Math.PI * ETA0_ohm * l * l) / 3;
    expect(Math.abs(radiatedPower(far, false, 0, k * l) / want - 1)).toBeLessThan(1e-6);
    // The upper half carries half, and the same rule over a perfect ground sees four times the intensity.
    const over = makeFarField(segments, currents, k, { kind: "plane", epsRe: Number.POSITIVE_INFINITY, epsIm: 0 });
    expect(Math.abs(radiatedPower(over, true, 0, k * l) / (2 * want) - 1)).toBeLessThan(1e-6);
  });

  test("half-wave dipole: η₀/8π · Cin 2π", () => {
    const { segments, currents } = upright(0.5, 0, (z) => Math.cos(k * z), 400);
    const far = makeFarField(segments, currents, k, { kind: "none" });
    const cin = 0.577_215_664_901_532_9 + Math.log(2 * Math.PI) - sinCosIntegral(2 * Math.PI).ci;
    const want = (ETA0_ohm / (8 * Math.PI)) * cin;
    // A cosine in straight pieces lies up to (kΔ)²/12 low on average, its power twice that; Δ is π/2 of an equal share.
    const widest = ((Math.PI / 2) * 0.5) / 400;
    expect(Math.abs(radiatedPower(far, false, 0, k * 0.25) / want - 1)).toBeLessThan((2 * (k * widest) ** 2) / 12);
  });

  test("two short elements two wavelengths apart: the power of two and sin kd/kd terms between", () => {
    const l = 1e-3;
    for (const d of [0.3, 1, 2.2]) {
      const wire = (id: string, x: number) => ({
        id,
        from_m: [x, 0, -l / 2] as const,
        to_m: [x, 0, l / 2] as const,
        radius_m: 1e-9,
        segments: 1,
      });
      const wires = [wire("a", 0), wire("b", d)];
      const { segments } = segmentWires(wires, [], joinWires(wires, false), METRE_WAVE_Hz, 1);
      const far = makeFarField(segments, new Float64Array([1, 0, 1, 0, 1, 0, 1, 0]), k, { kind: "none" });
      const x = k * d;
      // Mutual over self resistance of parallel short dipoles side by side.
      const between2 = 1.5 * (Math.sin(x) / x + Math.cos(x) / x ** 2 - Math.sin(x) / x ** 3);
      const want = ((Math.PI * ETA0_ohm * l * l) / 3) * 2 * (1 + between2);
      expect(Math.abs(radiatedPower(far, false, x, k * l) / want - 1)).toBeLessThan(1e-6);
    }
  });

  test("over soil a denser rule finds the same power to 1e-5", () => {
    for (const [epsRe, sigma] of [
      [13, 0.005],
      [5, 0.001],
      [81, 5],
    ] as const) {
      const { segments, currents } = upright(0.25, 0.125, (z) => Math.sin(k * (0.25 - z)), 40);
      const epsIm = -sigma / (2 * Math.PI * 7e6 * EPS0_FPerM);
      const far = makeFarField(segments, currents, k, { kind: "plane", epsRe, epsIm });
      const usual = radiatedPower(far, true, 0, k * 0.25);
      // Told of a greater height, it takes four times the directions.
      const dense = radiatedPower(far, true, 0, 60);
      expect(Math.abs(usual / dense - 1)).toBeLessThan(1e-5);
    }
  });
});

describe("reflection coefficients in their limits", () => {
  const at = (epsRe: number, epsIm: number, elevation_deg: number) => [
    ...reflection(new Float64Array(4), epsRe, epsIm, elevation_deg * rad),
  ];
  const soils = fc.tuple(between(1, 90), between(-3000, 0));

  test("nothing to reflect where the ground is air", () => {
    for (const e of [1, 20, 70, 90]) for (const v of at(1, 0, e)) expect(Math.abs(v)).toBeLessThan(1e-12);
  });

  test("grazing: both −1; overhead: opposite, and as the refractive index says", () => {
    fc.assert(
      fc.property(soils, ([epsRe, epsIm]) => {
        fc.pre(epsRe > 1.1);
        const [vr, vi, hr, hi] = at(epsRe, epsIm, 0);
        expect(vr).toBeCloseTo(-1, 12);
        expect(hr).toBeCloseTo(-1, 12);
        expect(Math.abs(vi!) + Math.abs(hi!)).toBeLessThan(1e-12);
        const top = at(epsRe, epsIm, 90);
        expect(top[0]!).toBeCloseTo(-top[2]!, 12);
        expect(top[1]!).toBeCloseTo(-top[3]!, 12);
        if (epsIm === 0) expect(top[0]!).toBeCloseTo((Math.sqrt(epsRe) - 1) / (Math.sqrt(epsRe) + 1), 12);
      }),
      settings,
    );
  });

  test("never more comes back than went in", () => {
    fc.assert(
      fc.property(soils, between(0, 90), ([epsRe, epsIm], e) => {
        const [vr, vi, hr, hi] = at(epsRe, epsIm, e);
        expect(Math.hypot(vr!, vi!)).toBeLessThanOrEqual(1 + 1e-12);
        expect(Math.hypot(hr!, hi!)).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { ...settings, numRuns: 200 },
    );
  });

  test("lossless soil: no vertical polarisation comes back at the angle whose tangent is 1/√ε", () => {
    for (const eps of [2, 5, 13, 80]) {
      const brewster_deg = Math.atan(1 / Math.sqrt(eps)) / rad;
      const [vr, vi, hr] = at(eps, 0, brewster_deg);
      expect(Math.hypot(vr!, vi!)).toBeLessThan(1e-12);
      // The other polarisation: (ε − 1)/(ε + 1) in size.
      expect(hr!).toBeCloseTo(-(eps - 1) / (eps + 1), 12);
    }
  });

  test("better and better soil tends to the perfect ground, as 2/(n sin α) and 2 sin α/n", () => {
    expect(at(Number.POSITIVE_INFINITY, 0, 12)).toEqual([1, 0, -1, 0]);
    const s = Math.sin(12 * rad);
    const [vr, vi, hr, hi] = at(10, -1e10, 12);
    const n = Math.sqrt(1e10);
    expect(Math.hypot(vr! - 1, vi!)).toBeCloseTo(2 / (n * s), 7);
    expect(Math.hypot(hr! + 1, hi!)).toBeCloseTo((2 * s) / n, 7);
  });
});
