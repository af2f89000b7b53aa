import { useMemo } from "react";
import { useAnswer } from "../store/useAnswer.ts";
import { usePlan } from "../store/usePlan.ts";
import { type AnswerLabel, answerLabel } from "./answerLabel.ts";

/** What the shown figures are: see `answerLabel`. */
export function useAnswerLabel(): AnswerLabel | null {
  const plan = usePlan((s) => s.plan);
  const isGood = usePlan((s) => s.verdict.ok);
  const state = useAnswer((s) => s.state);
  const model = useAnswer((s) => s.model);
  const refining = useAnswer((s) => s.refining);
  const previewOnly = useAnswer((s) => s.previewOnly);
  const readout = useAnswer((s) => s.readout);
  const fault = useAnswer((s) => s.fault);
  return useMemo(
    () => answerLabel(plan, isGood, { state, model, refining, previewOnly, readout, fault }),
    [plan, isGood, state, model, refining, previewOnly, readout, fault],
  );
}
