import type { Plan } from "../contract.ts";
import { checkPlan } from "../plan/checkPlan.ts";
import { feedReadout } from "../readouts/feedReadout.ts";
import type { PlanReadout } from "../readouts/PlanReadout.ts";
import { failed, ok, type Result } from "../result.ts";
import { solveTerminated } from "../solve/solveTerminated.ts";
import { checkWires } from "../wires/checkWires.ts";
import { wiresFromPlan } from "../wires/wiresFromPlan.ts";

/**
 * Feed impedances of a plan at a frequency other than its own, its wires cut as they are at its own: along a sweep the
 * curve is then smooth, and at the plan's frequency it is what `readPlan` says [MHz; ohm].
 */
export function feedsAt(candidate: Plan, frequency_MHz: number): Result<PlanReadout["feeds"]> {
  const plan = checkPlan({ ...candidate, frequency_MHz });
  if (!plan.ok) return plan;
  const laid = wiresFromPlan(plan.value, candidate.frequency_MHz);
  if (!laid.ok) return laid;
  const problems = checkWires(laid.value.problem);
  if (problems.length > 0) return failed(...problems);
  return ok(feedReadout(plan.value, solveTerminated(laid.value.problem)).feeds);
}
