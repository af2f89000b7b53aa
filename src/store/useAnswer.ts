import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import type { Answer } from "./Answer.ts";

export const answerStore = createStore<Answer>(() => ({
  readout: null,
  readoutPlan: null,
  state: "working",
  problems: [],
  band: null,
  bandPlan: null,
  pinReadouts: {},
  pinBands: {},
  fault: null,
}));

/** Reads the engine's answer: `useAnswer((s) => s.readout)`. Select narrowly. */
export function useAnswer<T>(select: (state: Answer) => T): T {
  return useStore(answerStore, select);
}
