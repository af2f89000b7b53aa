import type { PairKernel } from "./PairKernel.ts";
import { pairMoments } from "./pairMoments.ts";

const direct = new Float64Array(8);

/** Kernel of free space, g = e^{−jkR}/R for both potentials. */
export function freeSpaceKernel(k: number): PairKernel {
  return (out, at, segments, s, t) => {
    pairMoments(direct, segments, s, t, false, k);
    const g = segments.tangent;
    const dot = g[3 * s]! * g[3 * t]! + g[3 * s + 1]! * g[3 * t + 1]! + g[3 * s + 2]! * g[3 * t + 2]!;
    for (let i = 0; i < 8; i++) out[at + i] = dot * direct[i]!;
    out[at + 8] = direct[0]!;
    out[at + 9] = direct[4]!;
  };
}
