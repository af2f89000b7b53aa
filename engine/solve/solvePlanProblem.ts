import type { Plan } from "../contract.ts";
import { checkPlan } from "../plan/checkPlan.ts";
import { failed, ok, type Result } from "../result.ts";
import { checkWires } from "../wires/checkWires.ts";
import { type PlanWires, wiresFromPlan } from "../wires/wiresFromPlan.ts";
import { solveTerminated, type Terminated } from "./solveTerminated.ts";

/** Checks a plan, lays its wires, checks them, and solves. Shared by solvePlan and the readouts. */
export function solvePlanProblem(
  candidate: Plan,
  onPart?: (part: number) => void,
): Result<{ plan: Plan; laid: PlanWires; solved: Terminated }> {
  const plan = checkPlan(candidate);
  if (!plan.ok) return plan;
  const laid = wiresFromPlan(plan.value);
  if (!laid.ok) return laid;
  const { problem, notes } = laid.value;
  const problems = checkWires(problem);
  if (problems.length > 0) return failed(...problems);
  const solved = solveTerminated(problem, onPart);
  return ok({ plan: plan.value, laid: laid.value, solved: { ...solved, notes: [...notes, ...solved.notes] } });
}
