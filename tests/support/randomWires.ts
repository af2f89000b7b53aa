import fc from "fast-check";
import type { Ground, PortInput, WireInput, WireProblem } from "../../engine/index.ts";
import { between } from "./between.ts";

type Point = readonly [number, number, number];

/** One metre is one wavelength. */
export const METRE_WAVE_Hz = 299_792_458;

const angle = between(0, 2 * Math.PI);
const radius = between(-4, -2.5).map((x) => 10 ** x);
const metal = fc.constantFrom(undefined, undefined, 5.8e7, 3.5e7);

/** A chain, star or loop of points joined by wires, around the origin; `joints` lists index pairs. */
interface Frame {
  readonly points: readonly Point[];
  readonly joints: readonly (readonly [number, number])[];
}

/** Three or four wires from one point, well apart in direction, one of them going on round a corner. */
const star: fc.Arbitrary<Frame> = fc
  .record({
    turn: angle,
    rise: fc.oneof(between(-0.5, 0.5), fc.constant(0)),
    lengths: fc.array(between(0.08, 0.3), { minLength: 3, maxLength: 4 }),
  })
  .map(({ turn, rise, lengths }) => {
    const ends = lengths.map((L, i): Point => {
      const a = turn + (2 * Math.PI * i) / lengths.length;
      return [L * Math.cos(a), L * Math.sin(a), L * rise];
    });
    const corner: Point = [ends[0]![0], ends[0]![1], ends[0]![2] + 0.15];
    const spokes = ends.map((_, i) => [0, i + 1] as const);
    return { points: [[0, 0, 0], ...ends, corner], joints: [...spokes, [1, ends.length + 1]] };
  });

/** A closed loop of three to five sides, standing or leaning. */
const loop: fc.Arbitrary<Frame> = fc
  .record({ sides: fc.integer({ min: 3, max: 5 }), size: between(0.06, 0.22), lean: angle, turn: angle })
  .map(({ sides, size, lean, turn }) => {
    const points = Array.from({ length: sides }, (_, i): Point => {
      const a = turn + (2 * Math.PI * i) / sides;
      return [size * Math.cos(a), size * Math.sin(a) * Math.cos(lean), size * Math.sin(a) * Math.sin(lean)];
    });
    return { points, joints: points.map((_, i) => [i, (i + 1) % sides] as const) };
  });

/** A bent wire: one to three straight pieces, level or sloping anyhow, never folding back. */
const bent: fc.Arbitrary<Frame> = fc
  .array(
    fc.record({ L: between(0.1, 0.35), dx: between(-0.4, 0.4), dz: fc.oneof(between(-0.4, 0.4), fc.constant(0)) }),
    {
      minLength: 1,
      maxLength: 3,
    },
  )
  .map((pieces) => {
    const points: Point[] = [[0, 0, 0]];
    for (const { L, dx, dz } of pieces) {
      const [x, y, z] = points.at(-1)!;
      points.push([x + L * dx, y + L, z + L * dz]);
    }
    return { points, joints: pieces.map((_, i) => [i, i + 1] as const) };
  });

/** An upright on the ground, with one wire sloping away from its top. */
const rooted: fc.Arbitrary<Frame> = fc
  .record({ height: between(0.05, 0.4), reach: between(0.05, 0.3), down: between(-0.1, 0.1), turn: angle })
  .map(({ height, reach, down, turn }) => ({
    points: [
      [0, 0, 0],
      [0, 0, height],
      [reach * Math.cos(turn), reach * Math.sin(turn), height + down * height],
    ] as Point[],
    joints: [
      [0, 1],
      [1, 2],
    ] as const,
  }));

const load: fc.Arbitrary<PortInput["termination"]> = fc
  .tuple(between(0, 200), between(-300, 300))
  .map(([re, im]) => ({ kind: "load", impedance_ohm: { re, im } }));
const termination = fc.oneof(
  load,
  fc.constant<PortInput["termination"]>({ kind: "short" }),
  fc.constant<PortInput["termination"]>({ kind: "open" }),
);

/**
 * One or two structures, a good half wavelength apart: stars, loops, bent and sloping wires, and over ground uprights
 * that stand on it. The first is fed with 1 V in the middle of its first wire; the last wire of each carries a load, a
 * short or an open gap. Over ground, structures hang 0.45 wavelength up.
 */
export function randomWires(kind: "free-space" | "perfect"): fc.Arbitrary<WireProblem> {
  const frame = kind === "perfect" ? fc.oneof(star, loop, bent, rooted, rooted) : fc.oneof(star, loop, bent);
  const structure = fc.record({
    frame,
    radius_m: radius,
    sigma: metal,
    end: termination,
    segments: fc.integer({ min: 4, max: 9 }),
  });
  return fc.array(structure, { minLength: 1, maxLength: 2 }).map((structures) => {
    const wires: WireInput[] = [];
    const ports: PortInput[] = [];
    structures.forEach(({ frame: f, radius_m, sigma, end, segments }, n) => {
      const onGround =
        kind === "perfect" &&
        f.points[0]!.every((x) => x === 0) &&
        f.points[1]![0] === 0 &&
        f.points.length === 3 &&
        f.points[1]![1] === 0;
      const at: Point = [n * 1.1, n * 0.3, kind === "perfect" && !onGround ? 0.45 : 0];
      const place = (p: Point): Point => [p[0] + at[0], p[1] + at[1], p[2] + at[2]];
      f.joints.forEach(([from, to], i) => {
        wires.push({
          id: `${n}.${i}`,
          from_m: place(f.points[from]!),
          to_m: place(f.points[to]!),
          radius_m,
          segments,
          ...(sigma !== undefined && { conductivity_SPerM: sigma }),
        });
      });
      if (n === 0)
        ports.push({
          id: "feed",
          wire: "0.0",
          position: 0.5,
          termination: { kind: "voltage", volts: { re: 1, im: 0 } },
        });
      ports.push({ id: `end ${n}`, wire: `${n}.${f.joints.length - 1}`, position: 0.25, termination: end });
    });
    return { frequency_Hz: METRE_WAVE_Hz, ground: { kind } as Ground, wires, ports };
  });
}
