import { C0_mPerS } from "../../constants.ts";
import type { BuriedKernels } from "./BuriedKernels.ts";
import { buildPatches } from "./buildPatches.ts";
import { depthGrid } from "./depthGrid.ts";
import { type HalfSpace, halfSpaceOf } from "./HalfSpace.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import { keepKernel } from "./kernelStore.ts";
import { placeAcross, placeInSoil } from "./Placement.ts";

/** Wanted error of the series relative to 1/R. */
const TOLERANCE = 1e-5;
/** Nearest distances that the series resolve; nearer the remainders are as good as constant [m]. */
const NEAREST_M = 4e-3;
/** A series reaches this far, so that one serves every spacing that is dragged through. */
const REACH_WAVELENGTHS = 1.2;
/** Sums of two depths that one series for wires in soil serves [m]. */
const DEPTH_SUMS_M = [0.12, 0.3, 0.7] as const;
export interface Burial {
  /** Of any wire in soil [m]. */
  readonly deepest_m: number;
  /** Depths of the level ones [m]. */
  readonly level_m: readonly number[];
  /** Is any wire in soil not level? */
  readonly sloping: boolean;
}

/**
 * The kernels of wires in soil for a soil and a frequency, built when first asked for (some 40 ms a depth) and kept.
 *
 * @param reach_m largest distance between a wire and another, or its image [m]
 */
export function keptKernels(
  frequency_Hz: number,
  relativePermittivity: number,
  conductivity_SPerM: number,
  reach_m: number,
  burial: Burial,
): BuriedKernels {
  const h = halfSpaceOf(frequency_Hz, relativePermittivity, conductivity_SPerM);
  const far = Math.max((REACH_WAVELENGTHS * C0_mPerS) / frequency_Hz, 1.1 * reach_m);
  const sum = DEPTH_SUMS_M.find((d) => d >= 2 * burial.deepest_m) ?? 2.1 * burial.deepest_m;
  const soil = keep(`soil ${sum}`, h, reach_m, () => buildPatches(placeInSoil(h), NEAREST_M, far, sum, TOLERANCE));
  const across = new Map<number, KernelPatches>();
  const put = (depth: number) =>
    across.set(
      depth,
      keep(`across ${depth}`, h, reach_m, () => buildPatches(placeAcross(h, depth), NEAREST_M, far, far, TOLERANCE)),
    );
  const grid = burial.sloping ? depthGrid(h, burial.deepest_m) : [];
  for (const depth of grid) put(depth);
  for (const depth of burial.level_m) if (!across.has(depth)) put(depth);
  return { soil, across, grid };
}

function keep(what: string, h: HalfSpace, reach_m: number, build: () => KernelPatches): KernelPatches {
  return keepKernel(`${h.frequency_Hz}|${h.relativePermittivity}|${h.conductivity_SPerM}|${what}`, reach_m, build);
}
