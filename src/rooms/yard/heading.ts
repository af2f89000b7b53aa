import type { SavedPlan } from "../../../engine/index.ts";

/** True bearing of the beam; north when the plan does not say. */
export function headingOf(plan: SavedPlan): number {
  return plan.site?.heading_deg ?? 0;
}

/** The same array looking another way: elements are given along the beam, so all of them turn with it. */
export function withHeading(plan: SavedPlan, heading_deg: number): SavedPlan {
  const turned = ((heading_deg % 360) + 360) % 360;
  if (plan.site?.heading_deg === turned) return plan;
  return { ...plan, site: { ituRegion: 1, ...plan.site, heading_deg: turned } };
}
