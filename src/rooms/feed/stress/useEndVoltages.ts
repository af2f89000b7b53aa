import { useMemo } from "react";
import type { EndVoltages, Plan } from "../../../../engine/index.ts";
import { type AnswerModel, answerModels, inModel } from "../../../store/answerModels.ts";
import { usePlan } from "../../../store/usePlan.ts";
import type { EngineAsk } from "../../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import type { AnswerTo } from "../useEngineAnswers.ts";
import { type StageState, type Stages, useStages } from "../useStages.ts";
import { useStill } from "../useStill.ts";

type Ends = readonly EndVoltages[];
const none: readonly { readonly model: AnswerModel; readonly ask: Plan }[] = [];

/** The voltages at the ends of the plan's wires, over the current of the fed base: quick ones first, then the full ones. */
export function useEndVoltages(makeWorker: MakeWorker): Stages<Ends> {
  const plan = useStill(usePlan((s) => s.plan));
  const isGood = usePlan((s) => s.verdict.ok);
  const stages = useMemo(
    () =>
      isGood
        ? answerModels(plan)
            .best.toReversed()
            .map((model) => ({ model, ask: inModel(plan, model) }))
        : none,
    [plan, isGood],
  );
  return useStages(makeWorker, stages, endsOf);
}

function endsOf(plan: Plan, answerTo: AnswerTo): StageState<Ends> {
  const ask: EngineAsk = { kind: "ends", plan };
  const answer = answerTo(ask);
  if (answer?.kind !== "ends") return { asks: [ask], result: null, problems: [] };
  const { result } = answer;
  return result.ok
    ? { asks: [ask], result: result.value, problems: [] }
    : { asks: [ask], result: null, problems: result.problems };
}
