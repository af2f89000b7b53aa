import type { Plan } from "../../contract.ts";
import { corePlan } from "./corePlan.ts";
import { drivenOf } from "./drivenOf.ts";

/** The driven element alone on the same radials and ground: what every comparison is usually made with. */
export function loneVertical(plan: Plan): Plan {
  const driven = drivenOf(plan);
  return { ...corePlan(plan), elements: driven ? [driven] : [] };
}
