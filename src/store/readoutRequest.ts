import type { ReadoutRequest, SavedPlan } from "../../engine/index.ts";

/** The low angles the ladder always shows. */
export const standingRungs_deg: readonly number[] = [3, 5, 8, 10, 15, 20, 30];

/** Until a plan says otherwise: a long path of a few hops, and a quiet sector 60 degrees to either side of straight back. */
export const usualInterest = { elevation_deg: 8, rearSector_deg: 120, azimuthCutElevation_deg: 8 } as const;

/** What the page asks the engine about a plan: the standing rungs and the path's own, low to high. */
export function readoutRequest(plan: SavedPlan): ReadoutRequest {
  const { elevation_deg, rearSector_deg, azimuthCutElevation_deg } = plan.interest ?? usualInterest;
  const rungs = standingRungs_deg.includes(elevation_deg) ? standingRungs_deg : [...standingRungs_deg, elevation_deg];
  return {
    pathElevation_deg: elevation_deg,
    azimuthCutElevation_deg,
    rearSector_deg,
    rungs_deg: rungs.toSorted((a, b) => a - b),
  };
}
