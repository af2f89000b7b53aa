import type { Problem, SavedPlan } from "../../engine/index.ts";
import { readPlanFile } from "../../engine/index.ts";

export type KeptPlan =
  | { readonly kind: "none" }
  | { readonly kind: "plan"; readonly plan: SavedPlan }
  /** Not for this page to read: kept as it is, and never written over. */
  | { readonly kind: "unreadable"; readonly text: string; readonly problems: readonly Problem[] };

/**
 * Problems of value, not of shape: a plan that has only these is a plan someone was still working on, and can be
 * shown with its problems listed. Codes of shape (missing, wrong-type, newer-version …) are not among them.
 */
const mendable: ReadonlySet<string> = new Set([
  "out-of-range",
  "not-whole",
  "too-long",
  "raised-needs-full-wave",
  "insulation-too-thin",
  "band-order",
  "elements-overlap",
  "nothing-fed",
]);

/** Reads what autosave kept. Unlike a file, an unfinished plan comes back as it was left. */
export function readKeptPlan(text: string | null): KeptPlan {
  if (text === null) return { kind: "none" };
  const read = readPlanFile(text);
  if (read.ok) return { kind: "plan", plan: read.value };
  if (read.problems.every((problem) => mendable.has(problem.code)))
    return { kind: "plan", plan: JSON.parse(text) as SavedPlan };
  return { kind: "unreadable", text, problems: read.problems };
}
