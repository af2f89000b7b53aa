import { limits, type SavedPlan, withRadials } from "../../../engine/index.ts";

export interface RadialLie {
  readonly id: "earth" | "grass" | "raised" | "slit";
  /** As a gardener says it. */
  readonly name: string;
  /** What choosing it sets; the figure can be changed afterwards. */
  readonly height_m: number;
}

/** How radials lie. The heights of a wire's axis are round figures for what the words mean, not measured ones. */
export const radialLies: readonly RadialLie[] = [
  { id: "earth", name: "on bare earth (5 mm)", height_m: 0.005 },
  { id: "grass", name: "on short grass (2 cm)", height_m: 0.02 },
  { id: "raised", name: "raised", height_m: 2 },
  { id: "slit", name: "slit in (5 cm deep)", height_m: -0.05 },
];

/** What the words say of a height; undefined for one between them. A height of 0 has always meant lying on the soil. */
export function lieOf(height_m: number): RadialLie["id"] | undefined {
  if (height_m < 0) return "slit";
  if (height_m === 0) return "earth";
  return height_m > limits.previewHeight_m ? "raised" : radialLies.find((lie) => lie.height_m === height_m)?.id;
}

/** Radials at another height. Raised ones need the full-wave model, so a plan of the preview takes that up with them. */
export function withRadialHeight(plan: SavedPlan, height_m: number, elementId?: string): SavedPlan {
  const moved = withRadials(plan, { height_m }, elementId);
  return plan.ground.kind === "soil" && height_m > limits.previewHeight_m
    ? { ...moved, soilModel: "full-wave" }
    : moved;
}
