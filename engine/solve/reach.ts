import type { Segments } from "../wires/Segments.ts";

/** Diagonal of the box around all wires and their images in z = 0 [m]. */
export function reach(segments: Segments): number {
  const low = [0, 1, 2].map(() => Number.POSITIVE_INFINITY);
  const high = [0, 1, 2].map(() => Number.NEGATIVE_INFINITY);
  for (let s = 0; s < segments.count; s++)
    for (let c = 0; c < 3; c++) {
      const from = segments.start[3 * s + c]!;
      const to = from + segments.length[s]! * segments.tangent[3 * s + c]!;
      low[c] = Math.min(low[c]!, from, to);
      high[c] = Math.max(high[c]!, from, to);
    }
  const tall = 2 * Math.max(Math.abs(low[2]!), Math.abs(high[2]!));
  return Math.sqrt((high[0]! - low[0]!) ** 2 + (high[1]! - low[1]!) ** 2 + tall ** 2);
}
