import type { SavedPlan } from "../../../engine/index.ts";
import { verdictOf } from "../../store/verdictOf.ts";

/**
 * What an edit would break, in one sentence; null when it breaks nothing. Problems that the plan had before do not
 * count, or a faulty plan could not be mended step by step.
 */
export function planProblem(before: SavedPlan, after: SavedPlan): string | null {
  const verdict = verdictOf(after);
  if (verdict.ok) return null;
  const old = verdictOf(before);
  const known = new Set(old.ok ? [] : old.problems.map((problem) => `${problem.code} ${problem.where}`));
  return verdict.problems.find((problem) => !known.has(`${problem.code} ${problem.where}`))?.message ?? null;
}
