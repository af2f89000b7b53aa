import { useMemo, useState } from "react";
import type { Problem } from "../../../engine/index.ts";
import type { AnswerModel } from "../../store/answerModels.ts";
import type { EngineAsk } from "../../worker/EngineMessage.ts";
import type { MakeWorker } from "../../worker/EngineWorker.ts";
import { type AnswerTo, type EngineAnswers, useEngineAnswers } from "./useEngineAnswers.ts";

export interface StageState<R> {
  readonly asks: readonly EngineAsk[];
  readonly result: R | null;
  readonly problems: readonly Problem[];
}

export interface Stages<R> {
  /** Of the best model whose questions are all answered: never a mixture. */
  readonly result: R | null;
  readonly model: AnswerModel | null;
  readonly problems: readonly Problem[];
  readonly answers: EngineAnswers;
}

/**
 * Works a result out in one model after the other, the quick one first: `work` says what has to be asked and, once it
 * is answered, the result. It must be one and the same function from drawing to drawing.
 */
export function useStages<A, R>(
  makeWorker: MakeWorker,
  stages: readonly { readonly model: AnswerModel; readonly ask: A }[],
  work: (ask: A, answerTo: AnswerTo) => StageState<R>,
): Stages<R> {
  const [list, setList] = useState<readonly EngineAsk[]>([]);
  const answers = useEngineAnswers(makeWorker, list);
  const { answerTo } = answers;
  const states = useMemo(
    () => stages.map(({ model, ask }) => ({ model, ...work(ask, answerTo) })),
    [stages, work, answerTo],
  );
  const asks = useMemo(() => states.flatMap((one) => one.asks), [states]);
  // More questions come up as answers come in.
  if (asks !== list && JSON.stringify(asks) !== JSON.stringify(list)) setList(asks);
  const shown = states.findLast((one) => one.result !== null);
  return {
    result: shown?.result ?? null,
    model: shown?.model ?? null,
    problems: shown ? [] : (states.at(-1)?.problems ?? []),
    answers,
  };
}
