import type { Plan } from "../../contract.ts";
import { drivenOf } from "./drivenOf.ts";
import { reflectorOf } from "./reflectorOf.ts";
import { withElement } from "./withElement.ts";

/** The reflector moved to `spacing_m` behind the driven, along the beam. Without a reflector: the same plan. */
export function withSpacing<P extends Plan>(plan: P, spacing_m: number): P {
  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  if (!driven || !reflector) return plan;
  return withElement(plan, reflector.id, (element) => ({ ...element, forward_m: driven.forward_m - spacing_m }));
}
