import type { Plan } from "../../../engine/index.ts";
import type { Mast } from "../../charts/mastLines.ts";

/** The elements of a plan as masts on the horizon. */
export function mastsOf(plan: Plan): Mast[] {
  return plan.elements.map((e) => ({
    id: e.id,
    forward_m: e.forward_m,
    base_m: Math.max(0, e.radials.height_m),
    height_m: e.height_m,
    isFed: e.base.kind === "fed",
  }));
}
