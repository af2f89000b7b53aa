import {
  type BandReadout,
  type BandSample,
  layings,
  type Plan,
  type Result,
  type SavedPlan,
  smoothSweepStep,
} from "../../engine/index.ts";
import type { EngineAnswer, EngineAsk } from "../worker/EngineMessage.ts";
import type { EngineClient } from "../worker/engineClient.ts";
import type { Answer, Layings } from "./Answer.ts";
import { type AnswerModel, answerModels, inModel } from "./answerModels.ts";
import { bandRequest } from "./bandRequest.ts";
import { type Design, designsOf, keyOf, ofPins } from "./designs.ts";
import type { Readable, Writable } from "./followPlan.ts";
import type { PlanHistory } from "./PlanHistory.ts";
import { readoutRequest } from "./readoutRequest.ts";
import { recentlyUsed } from "./recentlyUsed.ts";
import { shortageStore } from "./shortageStore.ts";

export interface BandFollower {
  /** Shows the sweeps that are there and asks for what comes next. */
  sweep(): void;
  /** The same, but while the plan moves no oftener than at a pace. */
  sweepSoon(): void;
  /** The plan has changed: a dear solve for another one need not be waited for. */
  outdate(): void;
  /** The plan is still: dear solves are worth their while again. */
  rest(): void;
  /** After a fault, which no question has survived. */
  restart(): void;
  stop(): void;
}

const mostKept = 40;
/** In a drag the sweep across the band follows at this pace: frames are for the pattern. */
export const sweepPace_ms = 500;
/** … and where frames are short, at this one. */
export const slowSweepPace_ms = 1500;

/**
 * Keeps the sweeps of `answers` in step with `plans`: one question at a time, the plan on screen before the pins; what
 * is next is chosen anew each time. In the full model, where each frequency is dear, a sweep is asked for frequency by
 * frequency, once the full readouts are there, and goes on where it was broken off.
 */
export function followBands(
  plans: Readable<PlanHistory>,
  answers: Writable<Answer>,
  client: EngineClient,
): BandFollower {
  const kept = {
    preview: recentlyUsed<Result<BandReadout>>(mostKept),
    "full-wave": recentlyUsed<Result<BandReadout>>(mostKept),
  };
  /** What was asked last and is not answered yet. */
  let asked: EngineAsk | null = null;
  let isStill = true;
  let sweptAt_ms = Number.NEGATIVE_INFINITY;
  let later: ReturnType<typeof setTimeout> | undefined;
  const laid = recentlyUsed<Layings["rows"]>(mostKept);
  const begun = recentlyUsed<readonly BandSample[]>(mostKept);

  const bandOf = (one: Plan, plan: SavedPlan, model: AnswerModel) =>
    kept[model].get(keyOf(inModel(one, model), bandRequest(plan)));
  const missing = (plan: SavedPlan, isGood: boolean, model: AnswerModel) =>
    designsOf(plan, isGood, model, bandRequest(plan)).filter((one) => !kept[model].has(one.key));

  const pinsIn = (plan: SavedPlan, model: AnswerModel) =>
    ofPins(plan, (pin) => bandOf(pin.plan, plan, model), answers.getState().pinBands);

  const show = (plan: SavedPlan, models: readonly AnswerModel[]): AnswerModel | null => {
    for (const model of models) {
      const own = bandOf(plan, plan, model);
      if (!own?.ok) continue;
      const pinBands = pinsIn(plan, model);
      answers.setState({ band: own.value, bandPlan: plan, bandModel: model, pinBands });
      return model;
    }
    return null;
  };

  const sweep = (): void => {
    clearTimeout(later);
    later = undefined;
    sweptAt_ms = Date.now();
    const { plan, verdict } = plans.getState();
    const { best } = answerModels(plan);
    const shown = verdict.ok ? show(plan, best) : null;
    if (shown === null) answers.setState({ pinBands: pinsIn(plan, answers.getState().bandModel) });
    const { fault, state, model, refining } = answers.getState();
    if (fault !== null) return;

    const [rough] =
      shown !== "full-wave" && (!verdict.ok || best.includes("preview")) ? missing(plan, verdict.ok, "preview") : [];
    if (rough) {
      sweepAtOnce(plan, verdict.ok, rough);
      return;
    }
    const isSettled = isStill && verdict.ok && state === "fresh" && model === "full-wave" && refining === null;
    const [fine] = isSettled && best.includes("full-wave") ? missing(plan, true, "full-wave") : [];
    if (fine) sweepOn(plan, fine);
    else if (isSettled) layOtherwise(plan);
  };

  /** When all else is there: what the full answer would be if few radials lay otherwise. */
  const layOtherwise = (plan: SavedPlan) => {
    if (layings(plan).length === 0) {
      if (answers.getState().layings) answers.setState({ layings: null });
      return;
    }
    const request = readoutRequest(plan);
    const one = inModel(plan, "full-wave");
    const key = keyOf(one, request);
    const rows = laid.get(key);
    if (rows) {
      if (answers.getState().layings?.rows !== rows) answers.setState({ layings: { plan: one, rows } });
      return;
    }
    ask({ kind: "layings", plan: one, request }, (answer) => {
      if (answer.kind !== "layings") return;
      laid.set(key, answer.rows);
      goOn();
    });
  };

  const sweepSoon = () => {
    const pace_ms = shortageStore.getState().isShort ? slowSweepPace_ms : sweepPace_ms;
    const wait_ms = isStill ? 0 : sweptAt_ms + pace_ms - Date.now();
    if (wait_ms <= 0) sweep();
    else later ??= setTimeout(sweep, wait_ms);
  };

  const goOn = () => {
    if (answers.getState().state !== "working") sweepSoon();
  };

  /** Asks, unless just that is being answered already. */
  const ask = (question: EngineAsk, done: (answer: EngineAnswer) => void) => {
    if (asked && JSON.stringify(asked) === JSON.stringify(question)) return;
    asked = question;
    client.ask(question, (answer) => {
      if (asked === question) asked = null;
      done(answer);
    });
  };

  const sweepAtOnce = (plan: SavedPlan, isGood: boolean, { plan: one, key }: Design) =>
    ask({ kind: "band", plan: one, request: bandRequest(plan) }, (answer) => {
      if (answer.kind !== "band") return;
      kept.preview.set(key, answer.result);
      // While a drag goes on the newest finished sweep is shown, with the plan it belongs to.
      if (isGood && plans.getState().plan !== plan) show(plan, ["preview"]);
      goOn();
    });

  const sweepOn = (plan: SavedPlan, { plan: one, key }: Design): void => {
    const samples = begun.get(key) ?? [];
    const step = smoothSweepStep(bandRequest(plan), samples);
    if (step.kind === "done") {
      kept["full-wave"].set(key, { ok: true, value: step.band });
      sweep();
      return;
    }
    const { frequency_MHz } = step;
    const { elevation_deg } = bandRequest(plan);
    ask({ kind: "sample", plan: one, frequency_MHz, elevation_deg }, (answer) => {
      if (answer.kind !== "sample") return;
      if (answer.result.ok) begun.set(key, [...samples, answer.result.value]);
      else kept["full-wave"].set(key, answer.result);
      goOn();
    });
  };

  return {
    sweep,
    sweepSoon,
    rest() {
      isStill = true;
      if (later !== undefined) sweep();
    },
    outdate() {
      isStill = false;
      const { plan, verdict } = plans.getState();
      const wanted = new Set(designsOf(plan, verdict.ok, "full-wave", {}).map((one) => one.key));
      const isWanted = (one: EngineAsk) =>
        (one.kind !== "sample" && one.kind !== "layings") || wanted.has(keyOf(one.plan, {}));
      if (asked && !isWanted(asked)) asked = null;
      client.outdate(isWanted);
    },
    restart() {
      asked = null;
    },
    stop() {
      clearTimeout(later);
      client.stop();
    },
  };
}
