import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { type Answer, noAnswer } from "./Answer.ts";

export const answerStore = createStore<Answer>(() => noAnswer);

/** Reads the engine's answer: `useAnswer((s) => s.readout)`. Select narrowly. */
export function useAnswer<T>(select: (state: Answer) => T): T {
  return useStore(answerStore, select);
}
