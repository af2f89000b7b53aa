import { useStore } from "zustand";
import type { Answer } from "./Answer.ts";
import { calmInHand } from "./calmInHand.ts";
import { figuresTurn } from "./figuresTurn.ts";
import { answerStore } from "./useAnswer.ts";

/**
 * As `useAnswer`, for figures and sentences that are read and not watched: in a drag they follow at a pace, which leaves
 * the frames to the pattern and what is dragged. One state for all that use one of these hooks, so that they agree; that
 * an answer is old is never late, nor is anything once the hand has let go. Each part of the page has a hook of its own,
 * since the parts take turns.
 *
 * @param isLabelled by which model the answer is is written beside these figures: that is never late either. Other parts
 *   take their turn then, too: set all at once, they would cost a drag its first frame.
 */
export function calmAnswerHook(isLabelled = false): <T>(select: (state: Answer) => T) => T {
  // Whether an answer is still on its way is no matter of urgency: while a hand moves less often than frames come, that
  // changes with each move and back with each answer.
  const calm = calmInHand<Answer>(
    answerStore,
    (now, shown) =>
      (now.state === "old") !== (shown.state === "old") ||
      (isLabelled && now.model !== shown.model) ||
      now.fault !== shown.fault ||
      now.problems !== shown.problems,
    figuresTurn,
  );
  return (select) => useStore(calm, select);
}
