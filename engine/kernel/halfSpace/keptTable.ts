import { C0_mPerS } from "../../constants.ts";
import { buildTable } from "./buildTable.ts";
import { halfSpaceOf } from "./HalfSpace.ts";
import type { KernelTable } from "./KernelTable.ts";
import { placeInAir } from "./Placement.ts";

/** Tables kept: a band's worth of frequencies, or a few soils. */
const MOST_KEPT = 24;
/** Twice the least height of a wire over soil [m]. */
export const NEAREST_M = 6e-3;
/** A table reaches this far, so that one serves every spacing that is dragged through. */
const REACH_WAVELENGTHS = 2;

const kept = new Map<string, KernelTable>();

/** The table of a soil at a frequency, built when first asked for (50 to 200 ms) and kept; farther reach on demand. */
export function keptTable(
  frequency_Hz: number,
  relativePermittivity: number,
  conductivity_SPerM: number,
  reach_m: number,
): KernelTable {
  const key = `${frequency_Hz}|${relativePermittivity}|${conductivity_SPerM}`;
  let table = kept.get(key);
  if (!table || table.rMax < reach_m) {
    const usual = (REACH_WAVELENGTHS * C0_mPerS) / frequency_Hz;
    table = buildTable(
      placeInAir(halfSpaceOf(frequency_Hz, relativePermittivity, conductivity_SPerM)),
      NEAREST_M,
      Math.max(usual, 1.1 * reach_m),
    );
  }
  // Re-inserted at the end: the first key is the one longest unused.
  kept.delete(key);
  kept.set(key, table);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
  return table;
}
