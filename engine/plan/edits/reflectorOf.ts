import type { ElementPlan, Plan } from "../../contract.ts";
import { drivenOf } from "./drivenOf.ts";

/**
 * The unfed element that the user means by "the reflector": the first one behind the driven, else the first one
 * wherever it stands, so that dragging it past the driven does not lose it.
 */
export function reflectorOf(plan: Plan): ElementPlan | undefined {
  const unfed = plan.elements.filter((element) => element.base.kind !== "fed");
  const driven = drivenOf(plan);
  return (driven && unfed.find((element) => element.forward_m < driven.forward_m)) ?? unfed[0];
}
