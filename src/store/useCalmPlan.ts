import { useStore } from "zustand";
import { calmInHand } from "./calmInHand.ts";
import { figuresTurn } from "./figuresTurn.ts";
import type { PlanHistory } from "./PlanHistory.ts";
import { planStore } from "./usePlan.ts";

const calmStore = calmInHand<PlanHistory>(planStore, undefined, figuresTurn);

/** As `usePlan`, for measures that stand in figures beside what is dragged: see `calmAnswerHook`. */
export function useCalmPlan<T>(select: (state: PlanHistory) => T): T {
  return useStore(calmStore, select);
}
