import type { Plan } from "../../contract.ts";
import { drivenOf } from "./drivenOf.ts";
import { reflectorOf } from "./reflectorOf.ts";

/** How far the reflector stands behind the driven, along the beam [m]; undefined without either. */
export function spacingOf(plan: Plan): number | undefined {
  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  return driven && reflector && driven.forward_m - reflector.forward_m;
}
