import type { Segments } from "../wires/Segments.ts";

/** Geometry is told apart to this length [m]; two pairs that agree to it differ in their moments by far less than the rule does. */
const GRAIN_M = 1e-8;

/**
 * Names the geometry of a pair of wires up to what leaves their interaction unchanged over level ground: a level shift,
 * a turn about the vertical, a mirror image in an upright plane.
 *
 * Heights of the four ends and the four distances between ends of the two fix all that; the cuts fix the segments.
 *
 * @param cutKeys one text per wire that names its radius and its cuts (see wireCutKeys)
 */
export function wirePairKey(segments: Segments, cutKeys: readonly string[], a: number, b: number): string {
  const grain = (v: number) => Math.round(v / GRAIN_M);
  const { firstOfWire } = segments;
  const ends: number[][] = [];
  for (const w of [a, b]) {
    const first = firstOfWire[w]!;
    const last = firstOfWire[w + 1]! - 1;
    ends.push(point(segments, first, 0), point(segments, last, segments.length[last]!));
  }
  const distance = (i: number, j: number) => {
    const [p, q] = [ends[i]!, ends[j]!];
    return grain(Math.sqrt((p[0]! - q[0]!) ** 2 + (p[1]! - q[1]!) ** 2 + (p[2]! - q[2]!) ** 2));
  };
  const z = ends.map((p) => grain(p[2]!));
  return `${cutKeys[a]}|${cutKeys[b]}|${z[0]},${z[1]},${z[2]},${z[3]},${distance(0, 2)},${distance(0, 3)},${distance(1, 2)},${distance(1, 3)}`;
}

/** For each wire a text that names its radius, its cuts and nothing else. */
export function wireCutKeys(segments: Segments): string[] {
  const { firstOfWire, length, radius } = segments;
  return Array.from({ length: firstOfWire.length - 1 }, (_, w) => {
    const cuts: number[] = [Math.round(radius[firstOfWire[w]!]! / 1e-9)];
    for (let s = firstOfWire[w]!; s < firstOfWire[w + 1]!; s++) cuts.push(Math.round(length[s]! / GRAIN_M));
    return cuts.join(",");
  });
}

function point(segments: Segments, s: number, along: number): number[] {
  return [0, 1, 2].map((c) => segments.start[3 * s + c]! + along * segments.tangent[3 * s + c]!);
}
