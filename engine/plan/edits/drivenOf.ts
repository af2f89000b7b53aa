import type { ElementPlan, Plan } from "../../contract.ts";

/** The first fed element in plan order; undefined in a plan that has none (which `checkPlan` refuses). */
export function drivenOf(plan: Plan): ElementPlan | undefined {
  return plan.elements.find((element) => element.base.kind === "fed");
}
