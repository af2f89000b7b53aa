import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { type Complex, solveWires, type WireInput, type WireProblem } from "../../engine/index.ts";
import { joinWires } from "../../engine/wires/joinWires.ts";
import { segmentWires } from "../../engine/wires/segmentWires.ts";
import { between } from "../support/between.ts";
import { okValue } from "../support/okValue.ts";
import { METRE_WAVE_Hz, randomWires } from "../support/randomWires.ts";

type Point = readonly [number, number, number];
/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 30_000 });
const settings = { seed: 1905, numRuns: 10 } as const;

const feed = (problem: WireProblem): Complex => okValue(solveWires(problem)).ports[0]!.impedance_ohm;
const apart = (a: Complex, b: Complex) => Math.hypot(a.re - b.re, a.im - b.im) / Math.hypot(b.re, b.im);
const mapped = (problem: WireProblem, move: (p: Point) => Point): WireProblem => ({
  ...problem,
  wires: problem.wires.map((w) => ({ ...w, from_m: move(w.from_m), to_m: move(w.to_m) })),
});

/** Rotation by a unit quaternion. */
function turned([w, x, y, z]: readonly number[], [px, py, pz]: Point): Point {
  const q = { w: w!, x: x!, y: y!, z: z! };
  const tx = 2 * (q.y * pz - q.z * py);
  const ty = 2 * (q.z * px - q.x * pz);
  const tz = 2 * (q.x * py - q.y * px);
  return [
    px + q.w * tx + q.y * tz - q.z * ty,
    py + q.w * ty + q.z * tx - q.x * tz,
    pz + q.w * tz + q.x * ty - q.y * tx,
  ];
}
const part = between(-1, 1);
const quaternion = fc
  .array(part, { minLength: 4, maxLength: 4 })
  .filter((q) => Math.hypot(...q) > 0.1)
  .map((q) => q.map((v) => v / Math.hypot(...q)));

describe("free space has no place and no direction", () => {
  test("moved and turned, the impedance stays, and the gain turns along", () => {
    fc.assert(
      fc.property(randomWires("free-space"), quaternion, fc.tuple(part, part, part), (problem, q, [x, y, z]) => {
        const place = (p: Point): Point => {
          const [a, b, c] = turned(q, p);
          return [a + 3 * x, b + 3 * y, c + 3 * z];
        };
        const moved = mapped(problem, place);
        // Two kinds of quadrature meet where wires turn parallel to the axes or not: nothing else may differ.
        expect(apart(feed(moved), feed(problem))).toBeLessThan(1e-7);
        const was = okValue(solveWires(problem)).gain_dBi(20, 50);
        const [e, a] = [(20 * Math.PI) / 180, (50 * Math.PI) / 180];
        const [dx, dy, dz] = turned(q, [Math.cos(e) * Math.cos(a), Math.cos(e) * Math.sin(a), Math.sin(e)]);
        const now = okValue(solveWires(moved)).gain_dBi(
          (Math.asin(dz) * 180) / Math.PI,
          (Math.atan2(dy, dx) * 180) / Math.PI,
        );
        expect(Math.abs(10 ** (now / 10) - 10 ** (was / 10))).toBeLessThan(1e-6);
      }),
      settings,
    );
  });

  test("turned about the vertical over perfect ground", () => {
    fc.assert(
      fc.property(randomWires("perfect"), between(0, 6.28), (problem, angle) => {
        const q = [Math.cos(angle / 2), 0, 0, Math.sin(angle / 2)];
        const moved = mapped(problem, (p) => turned(q, p));
        expect(apart(feed(moved), feed(problem))).toBeLessThan(1e-7);
      }),
      settings,
    );
  });
});

test("lengths, radii and wavelength scaled together leave impedances and gain alone", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("free-space" as const, "perfect" as const),
      between(-1.4, 4).map((x) => 10 ** x),
      fc.nat(),
      (kind, scale, n) => {
        // Perfect conductors: skin depth does not scale.
        const [drawn] = fc.sample(randomWires(kind), { seed: n, numRuns: 1 });
        const lossless: WireProblem = {
          ...drawn!,
          wires: drawn!.wires.map(({ id, from_m, to_m, radius_m, segments }) => ({
            id,
            from_m,
            to_m,
            radius_m,
            segments: segments!,
          })),
        };
        const grown = mapped(lossless, ([x, y, z]) => [scale * x, scale * y, scale * z]);
        const scaled: WireProblem = {
          ...grown,
          frequency_Hz: lossless.frequency_Hz / scale,
          wires: grown.wires.map((w) => ({ ...w, radius_m: scale * w.radius_m })),
        };
        expect(apart(feed(scaled), feed(lossless))).toBeLessThan(1e-9);
        const [a, b] = [okValue(solveWires(scaled)), okValue(solveWires(lossless))];
        expect(Math.abs(10 ** (a.gain_dBi(25, 70) / 10) - 10 ** (b.gain_dBi(25, 70) / 10))).toBeLessThan(1e-8);
      },
    ),
    settings,
  );
});

describe("one wire or two", () => {
  const radius_m = 5e-4;
  /** A bent or straight antenna whose first wire is cut at its own segment ends into as many wires. */
  test("a wire cut at its segment ends is the same wire, whichever way its pieces run", () => {
    fc.assert(
      fc.property(
        between(0.2, 0.6),
        between(-1, 1),
        fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
        (length, slope, flips) => {
          const tip: Point = [slope * length, 0.1, length];
          const whole: WireProblem = {
            frequency_Hz: METRE_WAVE_Hz,
            ground: { kind: "perfect" },
            wires: [{ id: "w", from_m: [0, 0, 0], to_m: tip, radius_m, segments: 12 }],
            ports: [{ id: "p", wire: "w", position: 0, termination: { kind: "voltage", volts: { re: 1, im: 0 } } }],
          };
          const graph = joinWires(whole.wires, true);
          const { segments } = segmentWires(whole.wires, whole.ports, graph, METRE_WAVE_Hz, 1);
          const at = (s: number, end: number): Point =>
            [0, 1, 2].map(
              (c) => segments.start[3 * s + c]! + end * segments.length[s]! * segments.tangent[3 * s + c]!,
            ) as unknown as Point;
          const wires = Array.from({ length: 12 }, (_, s): WireInput => {
            // The first piece carries the port at its start.
            const ends = [at(s, 0), at(s, 1)] as const;
            const [from_m, to_m] = flips[s] && s > 0 ? [ends[1], ends[0]] : ends;
            return { id: s === 0 ? "w" : `w${s}`, from_m, to_m, radius_m, segments: 1 };
          });
          expect(apart(feed({ ...whole, wires }), feed(whole))).toBeLessThan(1e-9);
        },
      ),
      settings,
    );
  });

  test("perfect ground is the mirror image: twice the impedance in free space, 3 dB less gain", () => {
    fc.assert(
      fc.property(between(0.1, 0.6), between(-0.6, 0.6), fc.integer({ min: 4, max: 20 }), (height, lean, segments) => {
        const arm = (id: string, side: 1 | -1): WireInput[] => [
          { id: `${id} low`, from_m: [0, 0, 0], to_m: [lean * height, 0, side * height], radius_m, segments },
          {
            id: `${id} arm`,
            from_m: [lean * height, 0, side * height],
            to_m: [lean * height, 0.2, side * height * 1.1],
            radius_m,
            segments,
          },
        ];
        const volt = { kind: "voltage", volts: { re: 1, im: 0 } } as const;
        const over = solveWires({
          frequency_Hz: METRE_WAVE_Hz,
          ground: { kind: "perfect" },
          wires: arm("up", 1),
          ports: [{ id: "p", wire: "up low", position: 0, termination: volt }],
        });
        const free = solveWires({
          frequency_Hz: METRE_WAVE_Hz,
          ground: { kind: "free-space" },
          wires: [...arm("up", 1), ...arm("down", -1)],
          ports: [{ id: "p", wire: "up low", position: 0, termination: volt }],
        });
        const [a, b] = [okValue(over), okValue(free)];
        const [z, twice] = [a.ports[0]!.impedance_ohm, b.ports[0]!.impedance_ohm];
        expect(apart({ re: 2 * z.re, im: 2 * z.im }, twice)).toBeLessThan(1e-8);
        for (const [e, az] of [
          [10, 0],
          [35, 200],
        ] as const)
          expect(a.gain_dBi(e, az) - b.gain_dBi(e, az)).toBeCloseTo(10 * Math.log10(2), 6);
      }),
      settings,
    );
  });
});
