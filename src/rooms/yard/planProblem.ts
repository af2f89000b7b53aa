import type { SavedPlan } from "../../../engine/index.ts";
import { checkPlan } from "../../../engine/index.ts";

/**
 * What an edit would break, in one sentence; null when it breaks nothing. Problems that the plan had before do not
 * count, or a faulty plan could not be mended step by step.
 */
export function planProblem(before: SavedPlan, after: SavedPlan): string | null {
  const verdict = checkPlan(after);
  if (verdict.ok) return null;
  const old = checkPlan(before);
  const known = new Set(old.ok ? [] : old.problems.map((problem) => `${problem.code} ${problem.where}`));
  return verdict.problems.find((problem) => !known.has(`${problem.code} ${problem.where}`))?.message ?? null;
}
