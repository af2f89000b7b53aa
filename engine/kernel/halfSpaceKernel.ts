import type { Segments } from "../wires/Segments.ts";
import { freeSpaceKernel } from "./freeSpaceKernel.ts";
import type { BuriedKernels } from "./halfSpace/BuriedKernels.ts";
import { halfSpacePair } from "./halfSpace/halfSpacePair.ts";
import type { KernelTable } from "./halfSpace/KernelTable.ts";
import { remaindersAcross } from "./halfSpace/remaindersAcross.ts";
import { remaindersInAir } from "./halfSpace/remaindersInAir.ts";
import { remaindersInSoil } from "./halfSpace/remaindersInSoil.ts";
import { lossyMoments } from "./lossyMoments.ts";
import { PAIR_SIZE, type PairKernel } from "./PairKernel.ts";

const direct = new Float64Array(8);

/**
 * Kernel of two segments in air, in soil, or one in each. A segment lies on one side of z = 0, which it may touch.
 *
 *   both in air   free space plus what the soil reflects
 *   both in soil  the soil's own e^{−jk1 R}/R (K: over ε) plus what the surface reflects, z counted downwards
 *   across        what the surface lets through, which is all there is
 *
 * @param table  kernels in air for soil and frequency
 * @param buried absent: all segments are in air
 */
export function halfSpaceKernel(table: KernelTable, buried?: BuriedKernels): PairKernel {
  const { halfSpace } = table.place;
  const freeSpace = freeSpaceKernel(halfSpace.k0);
  const inAir = remaindersInAir(table);
  const air: PairKernel = (out, at, segments, s, t) => {
    freeSpace(out, at, segments, s, t);
    halfSpacePair(out, at, segments, s, t, inAir);
  };
  if (!buried) return air;

  const inSoil = remaindersInSoil(buried.soil);
  const across = remaindersAcross(halfSpace, buried.across, buried.grid);
  const { k1Re, k1Im, epsRe, epsIm } = halfSpace;
  const size = epsRe * epsRe + epsIm * epsIm;
  const depths = downwards();
  return (out, at, segments, s, t) => {
    const sBelow = isBelow(segments, s);
    const tBelow = isBelow(segments, t);
    if (!sBelow && !tBelow) return air(out, at, segments, s, t);
    if (sBelow && tBelow) {
      lossyMoments(direct, segments, s, t, false, k1Re, k1Im);
      const g = segments.tangent;
      const dot = g[3 * s]! * g[3 * t]! + g[3 * s + 1]! * g[3 * t + 1]! + g[3 * s + 2]! * g[3 * t + 2]!;
      for (let i = 0; i < 8; i++) out[at + i] = dot * direct[i]!;
      out[at + 8] = direct[0]!;
      out[at + 9] = direct[4]!;
      halfSpacePair(out, at, depths(segments), s, t, inSoil);
      const re = out[at + 8]!;
      const im = out[at + 9]!;
      out[at + 8] = (re * epsRe + im * epsIm) / size;
      out[at + 9] = (im * epsRe - re * epsIm) / size;
      return;
    }
    out.fill(0, at, at + PAIR_SIZE);
    if (tBelow) return halfSpacePair(out, at, segments, s, t, across);
    // The other way round: u and u' change places.
    halfSpacePair(out, at, segments, t, s, across);
    for (const i of [at + 1, at + 5]) {
      const kept = out[i]!;
      out[i] = out[i + 1]!;
      out[i + 1] = kept;
    }
  };
}

function isBelow({ start, tangent, length }: Segments, s: number): boolean {
  return start[3 * s + 2]! + 0.5 * length[s]! * tangent[3 * s + 2]! < 0;
}

/** The same segments with z counted downwards, formed once for each set. */
function downwards(): (segments: Segments) => Segments {
  let from: Segments | undefined;
  let turned: Segments | undefined;
  return (segments) => {
    if (segments !== from || !turned) {
      const flip = (v: Float64Array) => v.map((x, i) => (i % 3 === 2 ? -x : x));
      from = segments;
      turned = { ...segments, start: flip(segments.start), tangent: flip(segments.tangent) };
    }
    return turned;
  };
}
