import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildBasis } from "../../../engine/basis/buildBasis.ts";
import { portVectors } from "../../../engine/basis/portVectors.ts";
import { segmentCurrents } from "../../../engine/basis/segmentCurrents.ts";
import type { PortInput } from "../../../engine/index.ts";
import { joinWires } from "../../../engine/wires/joinWires.ts";
import { segmentWires } from "../../../engine/wires/segmentWires.ts";
import { METRE_WAVE_Hz, randomWires } from "../../support/randomWires.ts";
import { SHORT } from "../../support/uprights.ts";

const settings = { seed: 1845, numRuns: 40 } as const;

describe.each(["free-space", "perfect"] as const)("any wires, any coefficients, %s", (kind) => {
  const plane = kind === "perfect";
  const drawn = fc.tuple(randomWires(kind), fc.integer({ min: 1, max: 1000 })).map(([problem, seed]) => {
    const graph = joinWires(problem.wires, plane);
    // A port at every far end that meets another wire, besides those drawn.
    const farEnds = problem.wires
      .filter((_, w) => graph.degree[graph.endNode[2 * w + 1]!]! > 1)
      .map((w): PortInput => ({ id: `far ${w.id}`, wire: w.id, position: 1, termination: SHORT }));
    const ports = [...problem.ports, ...farEnds];
    const { segments, portEnd } = segmentWires(problem.wires, ports, graph, METRE_WAVE_Hz, 1);
    const basis = buildBasis(segments);
    const x = Float64Array.from({ length: 2 * basis.count }, (_, i) => Math.sin(seed + 1.3 * i * i));
    return { segments, portEnd, basis, x, currents: segmentCurrents(segments, basis, x) };
  });
  /** Current away from the node through a segment's end. */
  const outward = (currents: Float64Array, end: number, part: 0 | 1) =>
    ((end & 1) === 0 ? 1 : -1) * currents[4 * (end >> 1) + 2 * (end & 1) + part]!;

  test("Kirchhoff holds at every node, free ends carry nothing, grounded ones may", () => {
    fc.assert(
      fc.property(drawn, ({ segments, currents }) => {
        let grounded = 0;
        for (let n = 0; n < segments.nodeCount; n++) {
          const ends = [...segments.node.keys()].filter((e) => segments.node[e] === n);
          for (const part of [0, 1] as const) {
            const sum = ends.reduce((a, e) => a + outward(currents, e, part), 0);
            if (segments.grounded[n]) grounded = Math.max(grounded, Math.abs(sum));
            else expect(Math.abs(sum)).toBeLessThan(1e-12);
          }
        }
        if (segments.grounded.some((g) => g === 1)) expect(grounded).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  test("as many functions as a node of m ends leaves free: m − 1, or m on the ground", () => {
    fc.assert(
      fc.property(drawn, ({ segments, basis }) => {
        const degree = new Int32Array(segments.nodeCount);
        for (const n of segments.node) degree[n]!++;
        const want = degree.reduce((sum, m, n) => sum + (segments.grounded[n] ? m : m - 1), 0);
        expect(basis.count).toBe(want);
        // Every half is listed under its segment, once.
        expect([...basis.halvesOf].sort((a, b) => a - b)).toEqual([...new Array(basis.halfCount).keys()]);
        for (let s = 0; s < segments.count; s++)
          for (let i = basis.firstHalf[s]!; i < basis.firstHalf[s + 1]!; i++)
            expect(basis.halfSegment[basis.halvesOf[i]!]).toBe(s);
      }),
      settings,
    );
  });

  test("a port reads the current into its wire", () => {
    fc.assert(
      fc.property(drawn, ({ portEnd, basis, x, currents }) => {
        const p = portVectors(basis, portEnd);
        portEnd.forEach((end, i) => {
          for (const part of [0, 1] as const) {
            let read = 0;
            for (let n = 0; n < basis.count; n++) read += p[2 * (i * basis.count + n)]! * x[2 * n + part]!;
            expect(read).toBeCloseTo(outward(currents, end, part), 12);
          }
        });
      }),
      settings,
    );
  });
});
