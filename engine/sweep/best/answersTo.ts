import type { Problem, Result } from "../../result.ts";
import type { ArraySample } from "../trial/arraySample.ts";
import type { Known, TrialAsk } from "../trial/Trial.ts";

/** Which of some asks are answered, and how. */
export interface Answers {
  readonly missing: readonly TrialAsk[];
  readonly solved: readonly { readonly ask: TrialAsk; readonly sample: ArraySample }[];
  readonly refused: readonly Problem[];
}

/** Looks up some asks among what is known, in their order. */
export function answersTo(asks: readonly TrialAsk[], known: Known): Answers {
  const missing: TrialAsk[] = [];
  const solved: { ask: TrialAsk; sample: ArraySample }[] = [];
  const refused: Problem[] = [];
  for (const ask of asks) {
    const answer: Result<ArraySample> | undefined = known(ask);
    if (!answer) missing.push(ask);
    else if (answer.ok) solved.push({ ask, sample: answer.value });
    else refused.push(...answer.problems);
  }
  return { missing, solved, refused };
}
