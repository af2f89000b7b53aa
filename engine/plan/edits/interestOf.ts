import type { PlanInterest, SavedPlan } from "../SavedPlan.ts";

/** What to look at when the plan does not say: 10 degrees up, ahead, and a third of the circle behind. */
export const defaultInterest: PlanInterest = { elevation_deg: 10, rearSector_deg: 120, azimuthCutElevation_deg: 10 };

export function interestOf(plan: SavedPlan): PlanInterest {
  return plan.interest ?? defaultInterest;
}
