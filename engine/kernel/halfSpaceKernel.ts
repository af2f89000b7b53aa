import { freeSpaceKernel } from "./freeSpaceKernel.ts";
import { halfSpacePair } from "./halfSpace/halfSpacePair.ts";
import type { KernelTable } from "./halfSpace/KernelTable.ts";
import type { PairKernel } from "./PairKernel.ts";

/** Kernel of two segments in air over soil: free space plus what the soil reflects, from a table for soil and frequency. */
export function halfSpaceKernel(table: KernelTable): PairKernel {
  const direct = freeSpaceKernel(table.place.halfSpace.k0);
  return (out, at, segments, s, t) => {
    direct(out, at, segments, s, t);
    halfSpacePair(out, at, segments, s, t, table);
  };
}
