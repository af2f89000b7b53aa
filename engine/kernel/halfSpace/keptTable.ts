import { C0_mPerS } from "../../constants.ts";
import { buildTable } from "./buildTable.ts";
import { halfSpaceOf } from "./HalfSpace.ts";
import type { KernelTable } from "./KernelTable.ts";
import { keepKernel } from "./kernelStore.ts";
import { placeInAir } from "./Placement.ts";

/** Twice the least height of a wire over soil [m]. */
export const NEAREST_M = 6e-3;
/** A table reaches this far, so that one serves every spacing that is dragged through. */
const REACH_WAVELENGTHS = 2;

/** The table of a soil at a frequency, built when first asked for (50 to 200 ms) and kept; farther reach on demand. */
export function keptTable(
  frequency_Hz: number,
  relativePermittivity: number,
  conductivity_SPerM: number,
  reach_m: number,
): KernelTable {
  const key = `${frequency_Hz}|${relativePermittivity}|${conductivity_SPerM}|air`;
  const usual = (REACH_WAVELENGTHS * C0_mPerS) / frequency_Hz;
  return keepKernel(key, reach_m, () =>
    buildTable(
      placeInAir(halfSpaceOf(frequency_Hz, relativePermittivity, conductivity_SPerM)),
      NEAREST_M,
      Math.max(usual, 1.1 * reach_m),
    ),
  );
}
