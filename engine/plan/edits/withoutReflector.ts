import type { Plan } from "../../contract.ts";

/** The plan with its fed elements only. */
export function withoutReflector<P extends Plan>(plan: P): P {
  return { ...plan, elements: plan.elements.filter((element) => element.base.kind === "fed") };
}
