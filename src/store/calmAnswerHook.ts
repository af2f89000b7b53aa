import { useStore } from "zustand";
import type { Answer } from "./Answer.ts";
import { calmInHand } from "./calmInHand.ts";
import { figuresTurn } from "./figuresTurn.ts";
import { answerStore } from "./useAnswer.ts";

/**
 * As `useAnswer`, for figures and sentences that are read and not watched: in a drag they follow at a pace, which leaves
 * the frames to the pattern and what is dragged. One state for all that use one of these hooks, so that they agree; what
 * an answer is (of the plan on screen or not, by which model) is never late, nor is anything once the hand has let go.
 * Each part of the page has a hook of its own, since the parts take turns.
 */
export function calmAnswerHook(): <T>(select: (state: Answer) => T) => T {
  const calm = calmInHand<Answer>(
    answerStore,
    (now, shown) =>
      now.state !== shown.state ||
      now.model !== shown.model ||
      now.fault !== shown.fault ||
      now.problems !== shown.problems,
    figuresTurn,
  );
  return (select) => useStore(calm, select);
}
