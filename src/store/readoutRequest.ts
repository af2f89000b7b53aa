import type { ReadoutRequest, SavedPlan } from "../../engine/index.ts";
import { interestOf } from "../../engine/index.ts";

/** The low angles the ladder always shows. */
export const standingRungs_deg: readonly number[] = [3, 5, 8, 10, 15, 20, 30];

/** What the page asks the engine about a plan: the standing rungs and the path's own, low to high. */
export function readoutRequest(plan: SavedPlan): ReadoutRequest {
  const { elevation_deg, rearSector_deg, azimuthCutElevation_deg } = interestOf(plan);
  const rungs = standingRungs_deg.includes(elevation_deg) ? standingRungs_deg : [...standingRungs_deg, elevation_deg];
  return {
    pathElevation_deg: elevation_deg,
    azimuthCutElevation_deg,
    rearSector_deg,
    rungs_deg: rungs.toSorted((a, b) => a - b),
  };
}
