import type { Segments } from "../../engine/wires/Segments.ts";
import type { Ends } from "./pairByCutting.ts";

/** Bare perfect segments with the given ends, all of one radius, each a wire of its own that joins nothing. */
export function straightSegments(radius_m: number, ...ends: readonly Ends[]): Segments {
  const count = ends.length;
  const start = new Float64Array(3 * count);
  const tangent = new Float64Array(3 * count);
  const length = new Float64Array(count);
  for (const [i, [from, to]] of ends.entries()) {
    const d = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
    length[i] = Math.hypot(...d);
    start.set(from, 3 * i);
    tangent.set(
      d.map((x) => x / length[i]!),
      3 * i,
    );
  }
  return {
    count,
    start,
    tangent,
    length,
    radius: new Float64Array(count).fill(radius_m),
    wire: Int32Array.from({ length: count }, (_, i) => i),
    node: Int32Array.from({ length: 2 * count }, (_, i) => i),
    internal_ohmPerM: new Float64Array(2 * count),
    sheath: new Float64Array(2 * count),
    nodeCount: 2 * count,
    grounded: new Uint8Array(2 * count),
    firstOfWire: Int32Array.from({ length: count + 1 }, (_, i) => i),
  };
}
