import type { SavedPlan } from "../../engine/index.ts";

export interface BandSpan {
  readonly from_MHz: number;
  readonly to_MHz: number;
  readonly label: string;
}

/**
 * The span the SWR is judged over: the plan's band, or 2 % to either side of its frequency where the plan names none,
 * or one that is none: edges that are not finite, not above zero, or not in order, as a file may have them.
 */
export function bandSpan(band: SavedPlan["band"], frequency_MHz: number): BandSpan {
  if (band && band.from_MHz > 0 && band.from_MHz < band.to_MHz && band.to_MHz < Number.POSITIVE_INFINITY) return band;
  return { from_MHz: frequency_MHz * 0.98, to_MHz: frequency_MHz * 1.02, label: "2 % to either side" };
}
