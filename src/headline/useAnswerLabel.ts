import { useSyncExternalStore } from "react";
import { answerStore } from "../store/useAnswer.ts";
import { planStore } from "../store/usePlan.ts";
import { type AnswerLabel, answerLabel } from "./answerLabel.ts";

/** What the shown figures are: see `answerLabel`. The same label is the same object, so that a drag redraws nothing. */
export function useAnswerLabel(): AnswerLabel | null {
  return useSyncExternalStore(listen, labelNow);
}

function listen(changed: () => void): () => void {
  const stopPlan = planStore.subscribe(changed);
  const stopAnswer = answerStore.subscribe(changed);
  return () => {
    stopPlan();
    stopAnswer();
  };
}

let last: AnswerLabel | null = null;

function labelNow(): AnswerLabel | null {
  const { plan, verdict } = planStore.getState();
  const label = answerLabel(plan, verdict.ok, answerStore.getState());
  const isSame = label && last && label.kind === last.kind && label.icon === last.icon && label.text === last.text;
  if (!isSame) last = label;
  return last;
}
