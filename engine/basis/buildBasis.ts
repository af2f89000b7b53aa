import type { Segments } from "../wires/Segments.ts";
import type { Basis } from "./Basis.ts";

/**
 * Sets up overlapping triangles with Kirchhoff's law built in: a node where m segment ends meet gets m − 1 functions,
 * each flowing in through the first end and out through another; a grounded node gets one half function per end, its
 * current continuing in the ground plane. A free end gets none, so that the current vanishes there.
 *
 * Ends are ordered by segment number, so the first end of a node inside a wire is the segment that comes before it.
 */
export function buildBasis(segments: Segments): Basis {
  const endsOf: number[][] = Array.from({ length: segments.nodeCount }, () => []);
  for (let e = 0; e < 2 * segments.count; e++) endsOf[segments.node[e]!]!.push(e);

  const halfBasis: number[] = [];
  const halfSegment: number[] = [];
  const halfEnd: number[] = [];
  const halfSign: number[] = [];
  const addHalf = (basis: number, segmentEnd: number, flow: "in" | "out") => {
    const end = segmentEnd & 1;
    halfBasis.push(basis);
    halfSegment.push(segmentEnd >> 1);
    halfEnd.push(end);
    // Into the node along the tangent when the node is the segment's end; out of it when the node is its start.
    halfSign.push((flow === "in") === (end === 1) ? 1 : -1);
  };

  let count = 0;
  for (let n = 0; n < segments.nodeCount; n++) {
    const ends = endsOf[n]!;
    if (segments.grounded[n]) {
      for (const end of ends) addHalf(count++, end, "out");
    } else {
      for (let i = 1; i < ends.length; i++) {
        addHalf(count, ends[0]!, "in");
        addHalf(count++, ends[i]!, "out");
      }
    }
  }

  // Bucket the halves by segment.
  const firstHalf = new Int32Array(segments.count + 1);
  for (const s of halfSegment) firstHalf[s + 1]!++;
  for (let s = 0; s < segments.count; s++) firstHalf[s + 1]! += firstHalf[s]!;
  const next = firstHalf.slice();
  const halvesOf = new Int32Array(halfSegment.length);
  halfSegment.forEach((s, h) => {
    halvesOf[next[s]!++] = h;
  });

  return {
    count,
    halfCount: halfBasis.length,
    halfBasis: Int32Array.from(halfBasis),
    halfSegment: Int32Array.from(halfSegment),
    halfEnd: Uint8Array.from(halfEnd),
    halfSign: Int8Array.from(halfSign),
    halvesOf,
    firstHalf,
  };
}
