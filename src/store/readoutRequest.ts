import type { ReadoutRequest, SavedPlan } from "../../engine/index.ts";
import { interestOf } from "../../engine/index.ts";

/** The low angles the ladder always shows. */
export const standingRungs_deg: readonly number[] = [3, 5, 8, 10, 15, 20, 30];

/** The standing rungs and the path's own, low to high. */
export function rungsFor(path_deg: number): readonly number[] {
  if (standingRungs_deg.includes(path_deg)) return standingRungs_deg;
  return [...standingRungs_deg, path_deg].toSorted((a, b) => a - b);
}

/** What the page asks the engine about a plan. */
export function readoutRequest(plan: SavedPlan): ReadoutRequest {
  const { elevation_deg, rearSector_deg, azimuthCutElevation_deg } = interestOf(plan);
  return {
    pathElevation_deg: elevation_deg,
    azimuthCutElevation_deg,
    rearSector_deg,
    rungs_deg: rungsFor(elevation_deg),
  };
}
