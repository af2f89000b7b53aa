import { describe, expect, test } from "vitest";
import type { PortInput, WireInput } from "../../../engine/index.ts";
import { gappedJunctions } from "../../../engine/wires/gappedJunctions.ts";
import { JOIN_DISTANCE_m, joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentCounts } from "../../../engine/wires/segmentCounts.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { SHORT } from "../../support/uprights.ts";

type Point = readonly [number, number, number];
const wire = (id: string, from_m: Point, to_m: Point, more: Partial<WireInput> = {}): WireInput => ({
  id,
  from_m,
  to_m,
  radius_m: 1e-4,
  ...more,
});
const port = (id: string, on: string, position: number): PortInput => ({ id, wire: on, position, termination: SHORT });

describe("joinWires", () => {
  test("ends within a micrometre are one node, wherever they lie in space; farther ones are not", () => {
    // Far enough from the origin that the ends fall on either side of a cell of any grid.
    for (const x of [0, 1e-6, 3.999_999_5, -17.000_000_7, 123.456]) {
      const near = [wire("a", [0, 0, 5], [x, 1, 5]), wire("b", [x + 0.99 * JOIN_DISTANCE_m, 1, 5], [x + 3, 4, 5])];
      const far = [wire("a", [0, 0, 5], [x, 1, 5]), wire("b", [x + 1.01 * JOIN_DISTANCE_m, 1, 5], [x + 3, 4, 5])];
      expect(joinWires(near, false).nodeCount).toBe(3);
      expect(joinWires(far, false).nodeCount).toBe(4);
    }
  });

  test("degrees count ends; the ground takes ends within a micrometre of it, and only where there is one", () => {
    const wires = [
      wire("a", [0, 0, 0], [0, 0, 5]),
      wire("b", [0, 0, 5], [3, 0, 5]),
      wire("c", [-3, 0, 5], [0, 0, 5]),
      wire("d", [9, 0, 0.9e-6], [9, 0, 4]),
      wire("e", [12, 0, 1.1e-6], [12, 0, 4]),
    ];
    const graph = joinWires(wires, true);
    const node = (w: number, end: 0 | 1) => graph.endNode[2 * w + end]!;
    expect(graph.nodeCount).toBe(8);
    expect([node(0, 1), node(1, 0), node(2, 1)]).toEqual([node(0, 1), node(0, 1), node(0, 1)]);
    expect(graph.degree[node(0, 1)]).toBe(3);
    expect([0, 3, 4].map((w) => graph.grounded[node(w, 0)])).toEqual([1, 1, 0]);
    expect([...joinWires(wires, false).grounded]).toEqual(new Array(8).fill(0));
  });

  test("a junction with a gap at every end is found, one with an end left or on the ground is not", () => {
    const star = [1, 2, 3].map((i) => wire(`w${i}`, [0, 0, 0], [Math.cos(i), Math.sin(i), 0.2]));
    const ports = star.map((w, i) => port(`p${i}`, w.id, 0));
    const found = (p: readonly PortInput[], ground: boolean) =>
      gappedJunctions(star, p, joinWires(star, ground)).map((j) => j.ports);
    expect(found(ports, false)).toEqual([[0, 1, 2]]);
    expect(found(ports.slice(1), false)).toEqual([]);
    expect(found(ports, true)).toEqual([]);
  });
});

describe("segmentCounts", () => {
  test("240 a wavelength, at least twelve, no shorter than four radii, and what is asked for", () => {
    const counts = (...w: WireInput[]) => segmentCounts(w, 1);
    expect(counts(wire("a", [0, 0, 0], [0, 0, 0.25]))).toEqual([60]);
    expect(counts(wire("a", [0, 0, 0], [0, 0, 0.01]))).toEqual([12]);
    expect(counts(wire("a", [0, 0, 0], [0, 0, 0.25], { radius_m: 0.003 }))).toEqual([20]);
    expect(counts(wire("a", [0, 0, 0], [0, 0, 0.25], { radius_m: 0.1 }))).toEqual([2]);
    expect(counts(wire("a", [0, 0, 0], [0, 0, 0.25], { segments: 7 }))).toEqual([7]);
  });

  test("large problems thin out, to a sixth at most", () => {
    const many = (n: number) => Array.from({ length: n }, (_, i) => wire(`w${i}`, [i, 0, 0], [i, 0, 1]));
    expect(segmentCounts(many(5), 1)[0]).toBe(240);
    expect(segmentCounts(many(10), 1)[0]).toBe(120);
    expect(segmentCounts(many(60), 1)[0]).toBe(40);
  });
});

describe("segmentWires", () => {
  const mesh = (wires: readonly WireInput[], ports: readonly PortInput[] = []) =>
    segmentWires(wires, ports, joinWires(wires, false), 299_792_458, 1);

  test("segments follow one another from end to end, and share nodes only where wires meet", () => {
    const wires = [
      wire("a", [0, 0, 0], [0, 0.3, 0.4], { segments: 9 }),
      wire("b", [1, 1, 1], [0, 0.3, 0.4], { segments: 5 }),
    ];
    const { segments } = mesh(wires);
    expect(segments.count).toBe(14);
    expect([...segments.firstOfWire]).toEqual([0, 9, 14]);
    for (let s = 0; s < 14; s++) {
      const first = s === 0 || s === 9;
      const end = (c: number, i: number) =>
        segments.start[3 * i + c]! + segments.length[i]! * segments.tangent[3 * i + c]!;
      if (!first) {
        expect(segments.node[2 * s]).toBe(segments.node[2 * s - 1]);
        for (let c = 0; c < 3; c++) expect(segments.start[3 * s + c]!).toBeCloseTo(end(c, s - 1), 14);
      }
    }
    expect(segments.node[2 * 8 + 1]).toBe(segments.node[2 * 13 + 1]);
    expect(new Set(segments.node).size).toBe(segments.nodeCount);
    const sum = segments.length.slice(0, 9).reduce((a, b) => a + b);
    expect(sum).toBeCloseTo(0.5, 14);
  });

  test("a port inside a wire gets a node of its own, at its place, whatever its order", () => {
    const wires = [wire("a", [0, 0, 0], [0, 0, 1], { segments: 20 })];
    const { segments, portEnd } = mesh(wires, [port("hi", "a", 0.7), port("lo", "a", 0.15)]);
    for (const [i, at] of [0.7, 0.15].entries()) {
      expect(portEnd[i]! & 1).toBe(0);
      expect(segments.start[3 * (portEnd[i]! >> 1) + 2]!).toBeCloseTo(at, 14);
    }
    expect(segments.count).toBe(3 + 11 + 6);
  });

  test("ports at the ends lie at the first and the last segment", () => {
    const wires = [
      wire("a", [0, 0, 0], [0, 0, 1], { segments: 6 }),
      wire("b", [0, 0, 1], [1, 0, 1], { segments: 4 }),
      wire("c", [0, 0, 0], [1, 1, 0], { segments: 3 }),
    ];
    const { portEnd } = mesh(wires, [port("p", "a", 0), port("q", "a", 1), port("r", "b", 0), port("s", "c", 0)]);
    expect([...portEnd]).toEqual([0, 11, 12, 20]);
  });

  test("crowded towards both ends of a run, but no end below two and a half radii", () => {
    const thin = mesh([wire("a", [0, 0, 0], [0, 0, 1], { segments: 30, radius_m: 1e-6 })]).segments.length;
    expect(thin[0]!).toBeLessThan(thin[15]! / 10);
    expect(thin[29]!).toBeCloseTo(thin[0]!, 14);
    const thick = mesh([wire("a", [0, 0, 0], [0, 0, 1], { segments: 30, radius_m: 0.008 })]);
    expect(Math.min(...thick.segments.length)).toBeGreaterThanOrEqual(2.5 * 0.008 - 1e-12);
    expect(thick.shortest_radii).toBeCloseTo(1 / 30 / 0.008, 12);
  });

  test("each wire brings its own metal", () => {
    const wires = [
      wire("a", [0, 0, 0], [0, 0, 1], { segments: 2 }),
      wire("b", [1, 0, 0], [1, 0, 1], { segments: 2, conductivity_SPerM: 5.8e7 }),
    ];
    const z = mesh(wires).segments.internal_ohmPerM;
    expect([...z.slice(0, 4)]).toEqual([0, 0, 0, 0]);
    expect(z[4]!).toBeGreaterThan(0);
    expect(z[5]!).toBeGreaterThan(0);
  });
});
