import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { C0_mPerS, ETA0_ohm } from "../../../engine/constants.ts";
import type { RadialScreen } from "../../../engine/index.ts";
import type { Fineness } from "../../../engine/screen/Fineness.ts";
import type { ScreenInput, SlopingPieces } from "../../../engine/screen/ScreenInput.ts";
import { screenCorrection } from "../../../engine/screen/screenCorrection.ts";
import { mast } from "../../support/mast.ts";
import { sumOverGround } from "../../support/sumOverGround.ts";

const FREQUENCY_HZ = 7.1e6;
const omega = 2 * Math.PI * FREQUENCY_HZ;
const k = omega / C0_mPerS;
const lambda = (2 * Math.PI) / k;
const average = { relativePermittivity: 13, conductivity_SPerM: 0.005 };
const poor = { relativePermittivity: 5, conductivity_SPerM: 0.001 };

/** Lengths in wavelengths; `radials` null for a bare foot. */
interface Element {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly radials: readonly [count: number, length: number, radius_m: number] | null;
}

/** A little of every other element's current in each state, so that no term of the sum is idle. */
function amplitudes(element: number, states: number): (readonly [number, number])[] {
  return Array.from({ length: states }, (_, s) =>
    s === element ? ([1, 0] as const) : ([-0.1 + 0.05 * s, 0.04 * (element + 1)] as const),
  );
}

function screensOf(elements: readonly Element[]): RadialScreen[] {
  return elements.flatMap(({ x, y, radials }) =>
    radials
      ? [{ x_m: x * lambda, y_m: y * lambda, count: radials[0], length_m: radials[1] * lambda, radius_m: radials[2] }]
      : [],
  );
}

function inputOf(elements: readonly Element[], ground = average, nodes = 17): ScreenInput {
  const states = elements.length;
  return {
    k_radPerM: k,
    omega_radPerS: omega,
    ground,
    states,
    screens: screensOf(elements),
    lines: elements.map((e, i) =>
      mast(k, { x_m: e.x * lambda, y_m: e.y * lambda, height_m: e.height * lambda }, amplitudes(i, states), nodes),
    ),
  };
}

/** Largest difference of any entry, over the largest entry of the second. */
function distance(found: Float64Array, truth: Float64Array): number {
  let miss = 0;
  let size = 0;
  for (let i = 0; i < truth.length; i += 2) {
    miss = Math.max(miss, Math.hypot(found[i]! - truth[i]!, found[i + 1]! - truth[i + 1]!));
    size = Math.max(size, Math.hypot(truth[i]!, truth[i + 1]!));
  }
  return miss / size;
}

/** Twice to three times as fine everywhere: agrees with the sums below to 1e-4 and serves as reference for many cases. */
const fine: Fineness = {
  perRadian: 16,
  leastAngle: 12,
  leastRay: 10,
  perPhase: 4,
  perFold: 3,
  tail: 16,
  ringAngles: 40,
};

describe("against a sum over a million points, by another road", () => {
  const scenes: readonly (readonly [string, typeof average, readonly Element[]])[] = [
    ["one, 16 radials", average, [{ x: 0.1, y: 0.2, height: 0.25, radials: [16, 0.25, 1e-3] }]],
    ["one, none", average, [{ x: 0, y: 0, height: 0.22, radials: null }]],
    ["one, 2 long radials, poor soil", poor, [{ x: 0, y: 0, height: 0.25, radials: [2, 0.5, 1e-3] }]],
    [
      "two, circles overlapping, each hub in the other's circle",
      average,
      [
        { x: 0, y: 0, height: 0.24, radials: [16, 0.25, 0.8e-3] },
        { x: -0.12, y: 0.09, height: 0.26, radials: [32, 0.2, 1e-3] },
      ],
    ],
    [
      "two, circles apart",
      average,
      [
        { x: 0, y: 0, height: 0.25, radials: [60, 0.0625, 1e-3] },
        { x: 0.5, y: 0, height: 0.25, radials: [4, 0.125, 1e-3] },
      ],
    ],
    [
      "two, close, dense",
      average,
      [
        { x: 0, y: 0, height: 0.25, radials: [120, 0.25, 1e-3] },
        { x: 0, y: 0.05, height: 0.26, radials: [120, 0.25, 1e-3] },
      ],
    ],
    [
      "two, so dense about one that its perfect middle reaches into the other's cell",
      average,
      [
        { x: 0, y: 0, height: 0.25, radials: [120, 0.2, 14e-3] },
        { x: 0.06, y: 0, height: 0.26, radials: [4, 0.2, 1e-3] },
      ],
    ],
    [
      "two, one of them bare, poor soil",
      poor,
      [
        { x: 0, y: 0, height: 0.25, radials: [8, 0.3, 1e-3] },
        { x: 0.2, y: 0, height: 0.26, radials: null },
      ],
    ],
    [
      "three in a line, the outer ones unlike",
      average,
      [
        { x: 0, y: 0, height: 0.25, radials: [16, 0.2, 1e-3] },
        { x: 0.2, y: 0, height: 0.24, radials: [8, 0.125, 1e-3] },
        { x: -0.25, y: 0, height: 0.27, radials: [32, 0.3, 1e-3] },
      ],
    ],
    [
      "four, not in a line",
      average,
      [
        { x: 0, y: 0, height: 0.25, radials: [16, 0.25, 1e-3] },
        { x: 0.25, y: 0.02, height: 0.25, radials: [16, 0.125, 1e-3] },
        { x: 0.22, y: 0.3, height: 0.2, radials: [4, 0.25, 1e-3] },
        { x: -0.05, y: 0.2, height: 0.3, radials: [60, 0.4, 1e-3] },
      ],
    ],
  ];

  test.each(scenes)("%s", { timeout: 60_000 }, (_, ground, elements) => {
    const truth = sumOverGround(
      {
        k,
        omega,
        ...ground,
        skin_m: 1e-3,
        screens: screensOf(elements),
        masts: elements.map((e, i) => ({
          x_m: e.x * lambda,
          y_m: e.y * lambda,
          height_m: e.height * lambda,
          amplitude: amplitudes(i, elements.length),
        })),
      },
      elements.length,
    );
    expect(distance(screenCorrection(inputOf(elements, ground)), truth)).toBeLessThan(1e-3);
    expect(distance(screenCorrection(inputOf(elements, ground), fine), truth)).toBeLessThan(2e-4);
  });
});

describe("the usual number of points", () => {
  const radials = fc.record({
    count: fc.constantFrom(2, 3, 4, 8, 16, 32, 60, 120),
    length: fc.double({ min: 1 / 16, max: 0.5, noNaN: true }),
    radius_m: fc.double({ min: 0.3e-3, max: 2.5e-3, noNaN: true }),
  });
  const element = fc.record({
    x: fc.double({ min: -0.45, max: 0.45, noNaN: true }),
    y: fc.double({ min: -0.45, max: 0.45, noNaN: true }),
    height: fc.double({ min: 0.15, max: 0.35, noNaN: true }),
    radials: fc.option(radials, { freq: 12 }),
  });
  const scene = fc
    .array(element, { minLength: 1, maxLength: 4 })
    .filter((all) => all.every((a, i) => all.every((b, j) => i === j || Math.hypot(a.x - b.x, a.y - b.y) >= 0.05)));
  const sea = { relativePermittivity: 81, conductivity_SPerM: 5 };
  const soil = fc.constantFrom(average, poor, { relativePermittivity: 20, conductivity_SPerM: 0.03 }, sea);

  test("is within 1e-3 of a much finer one wherever elements and radials may lie", { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(scene, soil, (elements, ground) => {
        const all = elements.map((e) => ({
          ...e,
          radials: e.radials && ([e.radials.count, e.radials.length, e.radials.radius_m] as const),
        }));
        const input = inputOf(all, ground);
        expect(distance(screenCorrection(input), screenCorrection(input, fine))).toBeLessThan(1e-3);
      }),
      { seed: 71, numRuns: 80 },
    );
  });
});

describe("laws", () => {
  const pair: readonly Element[] = [
    { x: 0, y: 0, height: 0.24, radials: [16, 0.25, 1e-3] },
    { x: -0.2, y: 0, height: 0.26, radials: [8, 0.15, 1e-3] },
  ];

  test("dZ is symmetric to the last bit and linear in each state's currents", () => {
    const input = inputOf(pair);
    const dz = screenCorrection(input);
    expect([dz[2], dz[3]]).toEqual([dz[4], dz[5]]);
    // State 0 times j: dZ₀₀ × (−1), dZ₀₁ × j.
    const turned = screenCorrection({
      ...input,
      lines: input.lines.map((line) => {
        const current = line.current.slice();
        for (let n = 0; n < line.z_m.length; n++) {
          current[2 * n] = -line.current[2 * n + 1]!;
          current[2 * n + 1] = line.current[2 * n]!;
        }
        return { ...line, current };
      }),
    });
    expect(turned[0]).toBeCloseTo(-dz[0]!, 10);
    expect(turned[1]).toBeCloseTo(-dz[1]!, 10);
    expect(turned[2]).toBeCloseTo(-dz[3]!, 10);
    expect(turned[3]).toBeCloseTo(dz[2]!, 10);
    expect(turned[6]).toBeCloseTo(dz[6]!, 10);
  });

  test("moving and turning the whole array changes nothing", () => {
    const [c, s] = [Math.cos(1.1), Math.sin(1.1)];
    const moved = pair.map((e) => ({ ...e, x: 3 + c * e.x - s * e.y, y: -7 + s * e.x + c * e.y }));
    expect(distance(screenCorrection(inputOf(moved)), screenCorrection(inputOf(pair)))).toBeLessThan(1e-9);
  });

  test("soil of great conductivity: dZ falls as σ^−½ and leaves nothing", () => {
    const of = (conductivity_SPerM: number) =>
      screenCorrection(
        inputOf([{ x: 0, y: 0, height: 0.25, radials: null }], { relativePermittivity: 10, conductivity_SPerM }),
      );
    const [a, b] = [of(1e4), of(1e6)];
    expect(a[0]! / b[0]!).toBeCloseTo(10, 4);
    expect(a[1]! / b[1]!).toBeCloseTo(10, 4);
    expect(Math.hypot(of(1e14)[0]!, of(1e14)[1]!)).toBeLessThan(1e-5);
  });

  test("without radials, halving the conductor's radius adds Z_s ln 2 / 2π: the answer is that soft", () => {
    const input = inputOf([{ x: 0, y: 0, height: 0.25, radials: null }], {
      relativePermittivity: 9,
      conductivity_SPerM: 0,
    });
    const [line] = input.lines;
    const of = (radius_m: number) => screenCorrection({ ...input, lines: [{ ...line!, radius_m }] });
    // A loss-free soil of ε_r = 9 has exactly Z_s = η₀/3.
    expect(of(1e-3)[0]! - of(2e-3)[0]!).toBeCloseTo((ETA0_ohm / 3 / (2 * Math.PI)) * Math.LN2, 2);
    expect(of(1e-3)[1]! - of(2e-3)[1]!).toBeCloseTo(0, 2);
  });

  test("quarter-wave radials on average soil: more of them, less loss, 4 to 120 (common practice, no source)", () => {
    const loss = [4, 8, 16, 32, 60, 120].map(
      (count) => screenCorrection(inputOf([{ x: 0, y: 0, height: 0.25, radials: [count, 0.25, 1e-3] }]))[0]!,
    );
    expect(loss).toEqual([...loss].sort((a, b) => b - a));
    expect(new Set(loss).size).toBe(loss.length);
    // From 16 on, each doubling brings less than the one before.
    expect(loss[2]! - loss[3]!).toBeGreaterThan(loss[3]! - loss[4]!);
  });

  test("a conductor given in two lines, one above the other, is the same conductor", () => {
    const input = inputOf([pair[0]!]);
    const [line] = input.lines;
    const part = (from: number, to: number) => ({
      ...line!,
      z_m: line!.z_m.slice(from, to),
      current: line!.current.slice(2 * from, 2 * to),
    });
    const parted = screenCorrection({ ...input, lines: [part(0, 8), part(7, 17)] });
    expect(distance(parted, screenCorrection(input))).toBeLessThan(1e-4);
  });
});

describe("sloping pieces", () => {
  /** The lines of an input as loose pieces, each node moved by `bend`. */
  function pieces(input: ScreenInput, bend: (x: number, y: number, z: number) => readonly number[]): SlopingPieces {
    const count = input.lines.reduce((sum, line) => sum + line.z_m.length - 1, 0);
    const from_m = new Float64Array(3 * count);
    const to_m = new Float64Array(3 * count);
    const current = new Float64Array(4 * count * input.states);
    let i = 0;
    for (const { x_m, y_m, z_m, current: along } of input.lines)
      for (let n = 0; n + 1 < z_m.length; n++, i++) {
        from_m.set(bend(x_m, y_m, z_m[n]!), 3 * i);
        to_m.set(bend(x_m, y_m, z_m[n + 1]!), 3 * i);
        for (let s = 0; s < input.states; s++)
          for (let part = 0; part < 4; part++)
            current[4 * (s * count + i) + part] = along[2 * (s * z_m.length + n) + part]!;
      }
    return { from_m, to_m, radius_m: new Float64Array(count).fill(1e-3), current };
  }
  const elements: readonly Element[] = [
    { x: 0, y: 0, height: 0.25, radials: [16, 0.2, 1e-3] },
    { x: -0.2, y: 0.1, height: 0.26, radials: [8, 0.25, 1e-3] },
  ];

  test("upright ones give what lines give", () => {
    const input = inputOf(elements);
    const sloping = pieces(input, (x, y, z) => [x, y, z]);
    expect(distance(screenCorrection({ ...input, lines: [], sloping }), screenCorrection(input))).toBeLessThan(1e-4);
    // Half of each kind.
    const [first, second] = input.lines;
    const mixed = screenCorrection({
      ...input,
      lines: [first!],
      sloping: pieces({ ...input, lines: [second!] }, (x, y, z) => [x, y, z]),
    });
    expect(distance(mixed, screenCorrection(input))).toBeLessThan(1e-4);
  });

  test("leaning ones converge, and a small lean changes little", () => {
    const input = inputOf([elements[0]!]);
    const lean = (slope: number) => ({
      ...input,
      lines: [],
      sloping: pieces(input, (x, y, z) => [x + slope * z, y - 0.5 * slope * z, z]),
    });
    expect(distance(screenCorrection(lean(0.5)), screenCorrection(lean(0.5), fine))).toBeLessThan(1e-3);
    const upright = screenCorrection(input);
    const small = distance(screenCorrection(lean(0.05)), upright);
    expect(small).toBeLessThan(0.02);
    expect(distance(screenCorrection(lean(-0.05)), upright)).toBeCloseTo(small, 5);
    expect(distance(screenCorrection(lean(0.5)), upright)).toBeGreaterThan(0.05);
  });
});

test("currents that do not fit their nodes are the caller's mistake", () => {
  const input = inputOf([{ x: 0, y: 0, height: 0.25, radials: null }]);
  expect(() => screenCorrection({ ...input, states: 2 })).toThrow(RangeError);
  const sloping = {
    from_m: Float64Array.of(0, 0, 0),
    to_m: Float64Array.of(0, 0, 1),
    radius_m: Float64Array.of(1e-3),
    current: new Float64Array(3),
  };
  expect(() => screenCorrection({ ...input, sloping })).toThrow(RangeError);
});
