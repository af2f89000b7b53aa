import type { Plan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";

/** Of the uprights' tips over the soil, the base's own height with them. */
export function tallest_m(plan: Plan): number {
  return Math.max(...plan.elements.map((one) => one.height_m + Math.max(0, one.radials.height_m)));
}

/** One and a half times the tallest, to a tenth of a metre upward. */
export function lineDistance(plan: Plan, units: Units): string {
  return formatQuantity(Math.ceil(15 * tallest_m(plan)) / 10, "length_m", units);
}
