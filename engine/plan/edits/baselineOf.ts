import type { PinnedPlan, SavedPlan } from "../SavedPlan.ts";

/** The pin that every readout is compared to, if one is named. */
export function baselineOf(plan: SavedPlan): PinnedPlan | undefined {
  return plan.pins?.find((pin) => pin.id === plan.baseline);
}
