import { useMemo } from "react";
import { interestOf, type Refit, type RefitRequest } from "../../../../engine/index.ts";
import { type AnswerModel, answerModels, inModel } from "../../../store/answerModels.ts";
import { usePlan } from "../../../store/usePlan.ts";
import type { EngineAsk } from "../../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import type { AnswerTo } from "../../feed/useEngineAnswers.ts";
import { type StageState, type Stages, useStages } from "../../feed/useStages.ts";
import { useStill } from "../../feed/useStill.ts";
import { readingAtBase } from "../measuring/readingAtBase.ts";
import { benchOf } from "../useBenchEdit.ts";
import { asCutPlan } from "./asCut.ts";

const none: readonly { readonly model: AnswerModel; readonly ask: RefitRequest }[] = [];

/** What the readings say of the plan: by the quick model first, then by the full one. Idle while there are none. */
export function useRefit(makeWorker: MakeWorker, trySoils: boolean): Stages<Refit> {
  const plan = useStill(usePlan((s) => s.plan));
  const isGood = usePlan((s) => s.verdict.ok);
  const stages = useMemo(() => {
    const { readings = [], lead } = benchOf(plan);
    const atBases = readings.flatMap((one) => {
      const points = readingAtBase(one, lead);
      return points ? [{ ...one, at: "base" as const, points }] : [];
    });
    if (!isGood || atBases.length === 0) return none;
    const sorted = atBases.toSorted((a, b) => a.date.localeCompare(b.date));
    return answerModels(plan)
      .best.toReversed()
      .map((model) => ({
        model,
        ask: {
          plan: inModel(asCutPlan(plan), model),
          readings: sorted,
          trySoils,
          elevation_deg: interestOf(plan).elevation_deg,
          date: sorted.at(-1)!.date,
        },
      }));
  }, [plan, isGood, trySoils]);
  return useStages(makeWorker, stages, refitOf);
}

function refitOf(request: RefitRequest, answerTo: AnswerTo): StageState<Refit> {
  const ask: EngineAsk = { kind: "refit", request };
  const answer = answerTo(ask);
  if (answer?.kind !== "refit") return { asks: [ask], result: null, problems: [] };
  const { result } = answer;
  return result.ok
    ? { asks: [ask], result: result.value, problems: [] }
    : { asks: [ask], result: null, problems: result.problems };
}
