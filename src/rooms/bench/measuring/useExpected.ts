import { useMemo } from "react";
import type { BenchAllowance, ExpectedRequest, ExpectedSheet } from "../../../../engine/index.ts";
import { answerModels, inModel } from "../../../store/answerModels.ts";
import { usePlan } from "../../../store/usePlan.ts";
import type { EngineAsk } from "../../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import type { AnswerTo } from "../../feed/useEngineAnswers.ts";
import { type StageState, type Stages, useStages } from "../../feed/useStages.ts";
import { useStill } from "../../feed/useStill.ts";
import { asCutSteps } from "../refit/asCut.ts";

const none: readonly { readonly model: "preview"; readonly ask: ExpectedRequest }[] = [];

/** What the meter should show at each step: by the quick model first, then by the full one. */
export function useExpected(
  makeWorker: MakeWorker,
  allowance: BenchAllowance,
  isWanted: boolean,
): Stages<ExpectedSheet> {
  const plan = useStill(usePlan((s) => s.plan));
  const isGood = usePlan((s) => s.verdict.ok);
  const stages = useMemo(
    () =>
      isGood && isWanted
        ? answerModels(plan)
            .best.toReversed()
            .map((model) => ({ model, ask: { plan: inModel(plan, model), allowance } }))
        : none,
    [plan, isGood, allowance, isWanted],
  );
  const found = useStages(makeWorker, stages, sheetOf);
  const { result } = found;
  const sheet = useMemo(() => result && asCutSteps(result, plan), [result, plan]);
  return { ...found, result: sheet };
}

function sheetOf(request: ExpectedRequest, answerTo: AnswerTo): StageState<ExpectedSheet> {
  const ask: EngineAsk = { kind: "expected", request };
  const answer = answerTo(ask);
  if (answer?.kind !== "expected") return { asks: [ask], result: null, problems: [] };
  const { result } = answer;
  return result.ok
    ? { asks: [ask], result: result.value, problems: [] }
    : { asks: [ask], result: null, problems: result.problems };
}
