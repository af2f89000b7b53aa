import type { Problem } from "../../engine/index.ts";
import { useAnswer } from "./useAnswer.ts";
import { usePlan } from "./usePlan.ts";

/** Everything that has to be put right, whether the plan's check or the solver found it. */
export function useProblems(): readonly Problem[] {
  const verdict = usePlan((s) => s.verdict);
  const fromSolver = useAnswer((s) => s.problems);
  return verdict.ok ? fromSolver : verdict.problems;
}
