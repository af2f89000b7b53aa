import type { ElementPlan, Plan } from "../../../engine/index.ts";
import { drivenOf, reflectorOf } from "../../../engine/index.ts";

/** What the page calls an element: by its part in the array where it has a name, else by its place in the plan. */
export function elementName(plan: Plan, element: ElementPlan): string {
  if (element.id === drivenOf(plan)?.id) return "driven";
  if (element.id === reflectorOf(plan)?.id) return "reflector";
  return `element ${plan.elements.findIndex((other) => other.id === element.id) + 1}`;
}
