import type { Result, SavedPlan } from "../../engine/index.ts";
import { writePlanFile } from "../../engine/index.ts";
import { keptNames } from "./keptNames.ts";
import type { PlanHistory } from "./PlanHistory.ts";
import type { Shelf } from "./shelf.ts";

/**
 * Puts a read plan in place of the one at hand, which is kept twice: as an undo step, and on the shelf as "earlier",
 * so that it can be had back after the page was closed. A plan that could not be read changes nothing.
 */
export function openPlan(history: PlanHistory, shelf: Shelf, read: Result<SavedPlan>, label: string): boolean {
  if (!read.ok) return false;
  shelf.write(keptNames.earlier, writePlanFile(history.plan));
  history.open(read.value, label);
  return true;
}
