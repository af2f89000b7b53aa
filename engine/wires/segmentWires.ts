import type { PortInput, WireInput } from "../contract.ts";
import type { HalfSpace } from "../kernel/halfSpace/HalfSpace.ts";
import { crowdedCuts } from "./crowdedCuts.ts";
import { internalImpedance } from "./internalImpedance.ts";
import { JOIN_DISTANCE_m } from "./joinWires.ts";
import type { Segments } from "./Segments.ts";
import { FEWEST_IN_SOIL, PER_SOIL_WAVELENGTH, SHORTEST_SEGMENT_RADII, segmentCounts } from "./segmentCounts.ts";
import { sheathTerm } from "./sheathTerm.ts";
import type { WireGraph } from "./WireGraph.ts";

/** The few segments crowded at the ends may go down to this many radii, below SHORTEST_SEGMENT_RADII. */
const SHORTEST_END_RADII = 2.5;

export interface Meshed {
  readonly segments: Segments;
  /** Per port: the end of a segment (2·segment + end) at whose node the gap lies, on the far side from the junction. */
  readonly portEnd: Int32Array;
  /** Smallest average segment length of a run, in radii. */
  readonly shortest_radii: number;
}

/**
 * Cuts wires into segments, crowded towards the ends, so that every port lies on a node.
 *
 * Counts are those of segmentCounts. A port inside a wire at fraction p splits it into two runs of about p and 1 − p of
 * the count; where the engine chose the count, rounding up does not take a run below SHORTEST_SEGMENT_RADII. Of a wire that
 * passes into soil the part there may be short: it gets what runs in soil get at least, whatever was asked for the whole.
 *
 * @param soil where wires may lie in it: they are then cut at z = 0, and more finely below it
 */
export function segmentWires(
  wires: readonly WireInput[],
  ports: readonly PortInput[],
  graph: WireGraph,
  frequency_Hz: number,
  wavelength_m: number,
  soil?: HalfSpace,
): Meshed {
  const soilWavelength_m = soil && (2 * Math.PI) / Math.sqrt(soil.k1Re * soil.k1Re + soil.k1Im * soil.k1Im);
  const lengthOf = wires.map((w) =>
    Math.hypot(w.to_m[0] - w.from_m[0], w.to_m[1] - w.from_m[1], w.to_m[2] - w.from_m[2]),
  );
  const countOf = segmentCounts(wires, wavelength_m, soil);

  const start: number[] = [];
  const tangent: number[] = [];
  const length: number[] = [];
  const radius: number[] = [];
  const wireOf: number[] = [];
  const node: number[] = [];
  const internal: number[] = [];
  const sheath: number[] = [];
  const portEnd = new Int32Array(ports.length);
  const firstOfWire = new Int32Array(wires.length + 1);
  let nodeCount = graph.nodeCount;
  let shortest_radii = Number.POSITIVE_INFINITY;

  wires.forEach((wire, w) => {
    const [x0, y0, z0] = wire.from_m;
    const [x1, y1, z1] = wire.to_m;
    const L = lengthOf[w]!;
    const inside = ports.map((p, i) => ({
      i,
      at: p.position,
      mine: p.wire === wire.id && p.position > 0 && p.position < 1,
    }));
    const breaks = inside.filter((p) => p.mine).sort((a, b) => a.at - b.at);
    const edges = [0, ...breaks.map((b) => b.at), 1];
    if (soilWavelength_m !== undefined && z0 * z1 < 0) {
      const surface = z0 / (z0 - z1);
      if (edges.every((at) => Math.abs(at - surface) * L > JOIN_DISTANCE_m)) edges.push(surface);
      edges.sort((a, b) => a - b);
    }
    const first = length.length;
    firstOfWire[w] = first;
    let last = graph.endNode[2 * w]!;
    const z =
      wire.conductivity_SPerM === undefined
        ? { re: 0, im: 0 }
        : internalImpedance(frequency_Hz, wire.radius_m, wire.conductivity_SPerM);
    for (let r = 0; r + 1 < edges.length; r++) {
      const from = edges[r]!;
      const to = edges[r + 1]!;
      const fits =
        wire.segments === undefined
          ? Math.floor((L * (to - from)) / (SHORTEST_SEGMENT_RADII * wire.radius_m))
          : Number.POSITIVE_INFINITY;
      const middle = z0 + 0.5 * (from + to) * (z1 - z0);
      const fewest =
        soilWavelength_m !== undefined && middle < 0 && (wire.segments === undefined || z0 * z1 < 0)
          ? Math.max(FEWEST_IN_SOIL, Math.ceil((PER_SOIL_WAVELENGTH * L * (to - from)) / soilWavelength_m))
          : 1;
      const n = Math.max(1, Math.min(fits, Math.max(fewest, Math.round(countOf[w]! * (to - from)))));
      shortest_radii = Math.min(shortest_radii, (L * (to - from)) / (n * wire.radius_m));
      const cuts = crowdedCuts(n, (SHORTEST_END_RADII * wire.radius_m) / (L * (to - from)));
      for (let i = 0; i + 1 < cuts.length; i++) {
        const a = from + (to - from) * cuts[i]!;
        start.push(x0 + (x1 - x0) * a, y0 + (y1 - y0) * a, z0 + (z1 - z0) * a);
        tangent.push((x1 - x0) / L, (y1 - y0) / L, (z1 - z0) / L);
        length.push(L * (to - from) * (cuts[i + 1]! - cuts[i]!));
        radius.push(wire.radius_m);
        wireOf.push(w);
        internal.push(z.re, z.im);
        const [mediumRe, mediumIm] = soil && middle < 0 ? [soil.epsRe, soil.epsIm] : [1, 0];
        const { insulation } = wire;
        if (insulation)
          sheath.push(
            ...sheathTerm(wire.radius_m, insulation.radius_m, insulation.relativePermittivity, mediumRe, mediumIm),
          );
        else sheath.push(0, 0);
        const end = r + 2 === edges.length && i + 2 === cuts.length ? graph.endNode[2 * w + 1]! : nodeCount++;
        node.push(last, end);
        last = end;
      }
      // The gap of an inner port is at the start of the next run.
      for (const b of breaks) if (b.at === to) portEnd[b.i] = 2 * length.length;
    }
    ports.forEach((p, i) => {
      if (p.wire !== wire.id) return;
      if (p.position <= 0) portEnd[i] = 2 * first;
      if (p.position >= 1) portEnd[i] = 2 * (length.length - 1) + 1;
    });
  });
  firstOfWire[wires.length] = length.length;
  const grounded = new Uint8Array(nodeCount);
  grounded.set(graph.grounded);
  return {
    segments: {
      count: length.length,
      start: Float64Array.from(start),
      tangent: Float64Array.from(tangent),
      length: Float64Array.from(length),
      radius: Float64Array.from(radius),
      wire: Int32Array.from(wireOf),
      node: Int32Array.from(node),
      internal_ohmPerM: Float64Array.from(internal),
      sheath: Float64Array.from(sheath),
      nodeCount,
      grounded,
      firstOfWire,
    },
    portEnd,
    shortest_radii,
  };
}
