import type { Segments } from "../wires/Segments.ts";

/** Geometry is told apart to this length [m]; two pairs that agree to it differ in their moments by far less than the rule does. */
const GRAIN_M = 1e-8;

/** What names the wires of a set, each by itself. */
export interface WireKeys {
  /** Per wire: radius and cuts and nothing else. */
  readonly cuts: readonly string[];
  /** 6 per wire: both ends [m]. */
  readonly ends: Float64Array;
}

export function wireKeys({ firstOfWire, length, radius, start, tangent }: Segments): WireKeys {
  const wires = firstOfWire.length - 1;
  const cuts: string[] = [];
  const ends = new Float64Array(6 * wires);
  for (let w = 0; w < wires; w++) {
    const first = firstOfWire[w]!;
    const last = firstOfWire[w + 1]! - 1;
    cuts.push(cutKey(radius[first]!, length, first, last));
    for (let c = 0; c < 3; c++) {
      ends[6 * w + c] = start[3 * first + c]!;
      ends[6 * w + 3 + c] = start[3 * last + c]! + length[last]! * tangent[3 * last + c]!;
    }
  }
  return { cuts, ends };
}

/**
 * Names the geometry of a pair of wires up to what leaves their interaction unchanged over level ground: a level shift,
 * a turn about the vertical, a mirror image in an upright plane.
 *
 * Heights of the four ends and the four distances between ends of the two fix all that; the cuts fix the segments.
 */
export function wirePairKey({ cuts, ends }: WireKeys, a: number, b: number): string {
  const [p, q] = [6 * a, 6 * b];
  const z = (at: number) => Math.round(ends[at + 2]! / GRAIN_M);
  return `${cuts[a]}|${cuts[b]}|${z(p)},${z(p + 3)},${z(q)},${z(q + 3)},${apart(ends, p, q)},${apart(ends, p, q + 3)},${apart(ends, p + 3, q)},${apart(ends, p + 3, q + 3)}`;
}

/** Distance of two points in grains. */
function apart(at: Float64Array, p: number, q: number): number {
  const x = at[p]! - at[q]!;
  const y = at[p + 1]! - at[q + 1]!;
  const z = at[p + 2]! - at[q + 2]!;
  return Math.round(Math.sqrt(x * x + y * y + z * z) / GRAIN_M);
}

/**
 * Radius, number of segments, and the lengths of all of them mixed into 64 bits: some twenty characters whatever the number.
 * Among a million wires cut differently two would have one name once in forty million such sets.
 */
function cutKey(radius_m: number, length_m: Float64Array, first: number, last: number): string {
  let one = 0x9e3779b9;
  let other = 0x85ebca6b;
  for (let s = first; s <= last; s++) {
    const grains = Math.round(length_m[s]! / GRAIN_M);
    const low = grains | 0;
    const high = (grains / 4294967296) | 0;
    one = Math.imul(one ^ low, 0x01000193) ^ high;
    one ^= one >>> 15;
    other = Math.imul((other ^ low) + high, 0x5bd1e995);
    other ^= other >>> 13;
  }
  return `${Math.round(radius_m / 1e-9)},${last - first + 1},${(one >>> 0).toString(36)},${(other >>> 0).toString(36)}`;
}
