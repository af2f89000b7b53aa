import type { PortInput, WireInput } from "../contract.ts";
import { crowdedCuts } from "./crowdedCuts.ts";
import { internalImpedance } from "./internalImpedance.ts";
import type { Segments } from "./Segments.ts";
import type { WireGraph } from "./WireGraph.ts";

/** Segments per wavelength where the engine chooses. */
export const SEGMENTS_PER_WAVELENGTH = 240;
/** … and the coarsest it goes to keep a large problem within UNKNOWNS_SOUGHT. */
const COARSEST_PER_WAVELENGTH = 40;
const UNKNOWNS_SOUGHT = 1200;
/** The reduced kernel holds down to an average segment of four radii … */
export const SHORTEST_SEGMENT_RADII = 4;
/** … while the few crowded at the ends may go down to this many. */
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
 * A wire whose count is given keeps it. Otherwise it gets SEGMENTS_PER_WAVELENGTH, at least twelve, fewer where
 * segments would be shorter than four radii, and in large problems down to a sixth of that density.
 * A port inside a wire at fraction p splits it into two runs of about p and 1 − p of the count.
 */
export function segmentWires(
  wires: readonly WireInput[],
  ports: readonly PortInput[],
  graph: WireGraph,
  frequency_Hz: number,
  wavelength_m: number,
): Meshed {
  const lengthOf = wires.map((w) =>
    Math.hypot(w.to_m[0] - w.from_m[0], w.to_m[1] - w.from_m[1], w.to_m[2] - w.from_m[2]),
  );
  const total = lengthOf.reduce((a, b) => a + b, 0) / wavelength_m;
  const density = Math.min(SEGMENTS_PER_WAVELENGTH, Math.max(COARSEST_PER_WAVELENGTH, UNKNOWNS_SOUGHT / total));
  const countOf = wires.map((wire, w) => {
    if (wire.segments !== undefined) return wire.segments;
    const thickest = Math.floor(lengthOf[w]! / (SHORTEST_SEGMENT_RADII * wire.radius_m));
    return Math.max(2, Math.min(thickest, Math.max(12, Math.ceil((lengthOf[w]! / wavelength_m) * density))));
  });

  const start: number[] = [];
  const tangent: number[] = [];
  const length: number[] = [];
  const radius: number[] = [];
  const wireOf: number[] = [];
  const node: number[] = [];
  const internal: number[] = [];
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
      const n = Math.max(1, Math.round(countOf[w]! * (to - from)));
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
        const end = r + 2 === edges.length && i + 2 === cuts.length ? graph.endNode[2 * w + 1]! : nodeCount++;
        node.push(last, end);
        last = end;
      }
      // The gap of an inner port is at the start of the next run.
      if (r < breaks.length) portEnd[breaks[r]!.i] = 2 * length.length;
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
      nodeCount,
      grounded,
      firstOfWire,
    },
    portEnd,
    shortest_radii,
  };
}
