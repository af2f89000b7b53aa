import type { Plan } from "../contract.ts";
import { checkPlan } from "../plan/checkPlan.ts";
import { failed, ok, type Result } from "../result.ts";
import { checkWires } from "../wires/checkWires.ts";
import { wiresFromPlan } from "../wires/wiresFromPlan.ts";
import { solveTerminated, type Terminated } from "./solveTerminated.ts";

/** Checks a plan, lays its wires, checks them, and solves. Shared by solvePlan and the readouts. */
export function solvePlanProblem(candidate: Plan): Result<{ plan: Plan; solved: Terminated }> {
  const plan = checkPlan(candidate);
  if (!plan.ok) return plan;
  const problem = wiresFromPlan(plan.value);
  if (!problem.ok) return problem;
  const problems = checkWires(problem.value);
  if (problems.length > 0) return failed(...problems);
  return ok({ plan: plan.value, solved: solveTerminated(problem.value) });
}
