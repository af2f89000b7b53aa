import { useStore } from "zustand";
import { createTrials } from "./createTrials.ts";
import type { TrialRuns } from "./TrialRun.ts";

/** The page's trials, for code outside React. */
export const trials = createTrials();

/** Reads the trials: `useTrials((s) => s.runs.pace)`. Select narrowly. */
export function useTrials<T>(select: (state: TrialRuns) => T): T {
  return useStore(trials.store, select);
}
