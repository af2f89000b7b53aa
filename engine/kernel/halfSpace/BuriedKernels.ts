import type { KernelPatches } from "./KernelPatches.ts";

/** What wires in soil need besides the table for wires in air, all of one soil and frequency. Plain data but for the map. */
export interface BuriedKernels {
  /** Both points in soil. */
  readonly soil: KernelPatches;
  /** One in air, the other at the depth that is the key [m]. */
  readonly across: ReadonlyMap<number, KernelPatches>;
  /** Depths between which those of wires that are not level are interpolated, ascending; empty where all are level. */
  readonly grid: readonly number[];
}
