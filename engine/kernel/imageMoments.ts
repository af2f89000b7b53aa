import type { Segments } from "../wires/Segments.ts";
import { pairMoments } from "./pairMoments.ts";

const image = new Float64Array(8);

/**
 * What a perfect ground at z = 0 adds: the mirror image of segment t, its charge reversed, its horizontal current
 * reversed and its vertical current kept. In terms of the mirrored tangent t' both come to a factor −1.
 *
 * @param out 10 numbers as described for GroundMoments
 */
export function imageMoments(out: Float64Array, segments: Segments, s: number, t: number, k: number): void {
  pairMoments(image, segments, s, t, true, k);
  const g = segments.tangent;
  const dot = g[3 * s]! * g[3 * t]! + g[3 * s + 1]! * g[3 * t + 1]! - g[3 * s + 2]! * g[3 * t + 2]!;
  for (let i = 0; i < 8; i++) out[i] = -dot * image[i]!;
  out[8] = -image[0]!;
  out[9] = -image[4]!;
}
