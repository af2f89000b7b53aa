import { useStore } from "zustand";
import type { Answer } from "./Answer.ts";
import { calmly } from "./calmly.ts";
import { calmPace_ms } from "./calmPace.ts";
import { handStore } from "./handStore.ts";
import { answerStore } from "./useAnswer.ts";

const calmStore = calmly<Answer>(
  answerStore,
  calmPace_ms,
  (now, shown) =>
    !handStore.getState().isHolding ||
    now.state !== shown.state ||
    now.model !== shown.model ||
    now.fault !== shown.fault ||
    now.problems !== shown.problems,
);

handStore.subscribe(({ isHolding }) => {
  if (!isHolding) calmStore.setState(answerStore.getState(), true);
});

/**
 * As `useAnswer`, for figures and sentences that are read and not watched: in a drag they follow at a pace, which leaves
 * the frames to the pattern, the ladder and what is dragged. One state for all of them, so that they agree; what an
 * answer is (of the plan on screen or not, by which model) is never late, nor is anything once the hand has let go.
 */
export function useCalmAnswer<T>(select: (state: Answer) => T): T {
  return useStore(calmStore, select);
}
