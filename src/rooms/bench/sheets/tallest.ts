import { FOOT_m, type Plan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";

/** Of the uprights' tips over the soil, the base's own height with them. */
export function tallest_m(plan: Plan): number {
  return Math.max(...plan.elements.map((one) => one.height_m + Math.max(0, one.radials.height_m)));
}

/** A distance to keep: never rounded down, to a tenth of a metre or a foot. */
export function keptDistance(distance_m: number, units: Units): string {
  // 1e-9: a distance that is just so many must not be one more by rounding.
  if (units === "imperial") return `${Math.ceil(distance_m / FOOT_m - 1e-9)} ft`;
  return `${(Math.ceil(10 * distance_m - 1e-9) / 10).toFixed(1)} m`;
}

/** One and a half times the tallest. */
export const lineDistance = (plan: Plan, units: Units) => keptDistance(1.5 * tallest_m(plan), units);
