import { useStore } from "zustand";
import { createPlanStore } from "./createPlanStore.ts";
import { demoPlan } from "./demoPlan.ts";
import type { PlanHistory } from "./PlanHistory.ts";

/** The page's one plan store, for code outside React. */
export const planStore = createPlanStore(demoPlan);

/**
 * Reads the plan store: `usePlan((s) => s.plan.elements)`. Select narrowly. Actions never change, so
 * `const edit = usePlan((s) => s.edit)` causes no redraw; outside React use `planStore.getState()`.
 */
export function usePlan<T>(select: (state: PlanHistory) => T): T {
  return useStore(planStore, select);
}
