import type { SavedPlan } from "../../../engine/index.ts";

export interface BandSpan {
  readonly from_MHz: number;
  readonly to_MHz: number;
  readonly label: string;
}

/** The span the SWR is judged over: the plan's band, or 2 % to either side of its frequency. */
export function bandSpan(plan: SavedPlan): BandSpan {
  if (plan.band) return plan.band;
  const f = plan.frequency_MHz;
  return { from_MHz: f * 0.98, to_MHz: f * 1.02, label: "2 % to either side" };
}
