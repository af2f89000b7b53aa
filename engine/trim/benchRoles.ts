import type { Plan } from "../contract.ts";
import { reflectorOf } from "../plan/edits/reflectorOf.ts";
import { failed, ok, type Result } from "../result.ts";

/** Which elements of a plan the bench means, by their index. */
export interface BenchRoles {
  readonly driven: number;
  readonly reflector?: number;
}

/** The fed element and the reflector of a checked plan. Problem: not exactly one element is fed. */
export function benchRoles(plan: Plan): Result<BenchRoles> {
  const fed = plan.elements.flatMap(({ base }, i) => (base.kind === "fed" ? [i] : []));
  if (fed.length !== 1)
    return failed({
      code: "not-one-fed",
      where: "elements",
      message: `The plan feeds ${fed.length} elements; measuring goes by steps for exactly 1 fed element.`,
    });
  const reflector = reflectorOf(plan);
  return ok({ driven: fed[0]!, ...(reflector && { reflector: plan.elements.indexOf(reflector) }) });
}
