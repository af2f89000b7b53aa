import { freeSpaceKernel } from "./freeSpaceKernel.ts";
import type { PairKernel } from "./PairKernel.ts";
import { pairMoments } from "./pairMoments.ts";

const image = new Float64Array(8);

/**
 * Kernel over a perfect ground at z = 0: free space plus the mirror image of segment t, its charge reversed, its
 * horizontal current reversed and its vertical current kept. In terms of the mirrored tangent both come to a factor −1.
 */
export function perfectGroundKernel(k: number): PairKernel {
  const direct = freeSpaceKernel(k);
  return (out, at, segments, s, t) => {
    direct(out, at, segments, s, t);
    pairMoments(image, segments, s, t, true, k);
    const g = segments.tangent;
    const dot = g[3 * s]! * g[3 * t]! + g[3 * s + 1]! * g[3 * t + 1]! - g[3 * s + 2]! * g[3 * t + 2]!;
    for (let i = 0; i < 8; i++) out[at + i]! -= dot * image[i]!;
    out[at + 8]! -= image[0]!;
    out[at + 9]! -= image[4]!;
  };
}
