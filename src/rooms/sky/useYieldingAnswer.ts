import { useStore } from "zustand";
import type { Answer } from "../../store/Answer.ts";
import { answerStore } from "../../store/useAnswer.ts";
import { yieldingStore } from "../../store/yieldingStore.ts";

const yielding = yieldingStore<Answer>(answerStore);

/** The answer as the azimuth cut follows it: see `yieldingStore`. */
export function useYieldingAnswer<T>(select: (state: Answer) => T): T {
  return useStore(yielding, select);
}
