import type { Plan, PlanReadout, Problem, Result, SavedPlan } from "../../engine/index.ts";
import { baselineOf } from "../../engine/index.ts";
import type { EngineAnswer, EngineAsk } from "../worker/EngineMessage.ts";
import type { MakeWorker } from "../worker/EngineWorker.ts";
import { engineClient } from "../worker/engineClient.ts";
import type { Answer } from "./Answer.ts";
import { type AnswerModel, answerModels, inModel } from "./answerModels.ts";
import { designsOf, keyOf, ofPins } from "./designs.ts";
import type { Follower } from "./Follower.ts";
import { followBands } from "./followBands.ts";
import { fullPace } from "./fullPace.ts";
import { heldForFrame, type NextFrame, nextFrame } from "./heldForFrame.ts";
import type { PlanHistory } from "./PlanHistory.ts";
import { paceKeeper } from "./paceKeeper.ts";
import { readoutRequest } from "./readoutRequest.ts";
import { recentlyUsed } from "./recentlyUsed.ts";

/** One and the same empty list, so that nothing is drawn anew for another. */
const none: readonly Problem[] = [];

export interface Readable<T> {
  getState(): T;
  subscribe(listener: (state: T, before: T) => void): () => void;
}
export interface Writable<T> {
  getState(): T;
  setState(part: Partial<T>): void;
}

/** Answers kept for pinned plans and for undo, in each model: the answers of one plan are about 30 kB. */
const mostKept = 40;
/** A plan this long unchanged is worth the full answer. */
export const still_ms = 120;
/** Where no preview takes its place, an answer to another plan is not left standing unmarked for longer than this. */
export const markOld_ms = 500;

/**
 * Keeps the answers in `store` in step with `plans`: the preview at once, every frame of a drag; the full answer, where the plan
 * asks for it, in its place as soon as the plan has been still for a moment. Shows only answers that belong to the plan
 * on screen (or says that they do not), and compares only answers of one model.
 *
 * Where the full answer takes no longer than a preview would seem to, in a small field, it is asked for at once in every frame,
 * alone.
 *
 * Three workers, so that nothing holds up the answer to a moving finger: for previews, for full answers, for sweeps.
 * Answers are handed on with the next frame (`later`), or with the next change of the plan if that is sooner: in a drag
 * the page is then drawn anew once a frame, for the plan and the answer together.
 */
export function followPlan(
  plans: Readable<PlanHistory>,
  store: Writable<Answer>,
  makeWorker: MakeWorker,
  later: NextFrame = nextFrame,
  paces: typeof fullPace = fullPace,
): Follower {
  const answers = heldForFrame(store, later);
  const onFault = (message: string) => answers.setState({ state: "old", fault: message, refining: null });
  const prompt = engineClient(makeWorker, onFault);
  const full = engineClient(makeWorker, onFault);
  const bands = followBands(plans, answers, engineClient(makeWorker, onFault));
  const kept = {
    preview: recentlyUsed<Result<PlanReadout>>(mostKept),
    "full-wave": recentlyUsed<Result<PlanReadout>>(mostKept),
  };
  let stillness: ReturnType<typeof setTimeout> | undefined;
  let patience: ReturnType<typeof setTimeout> | undefined;
  /** The design last asked of the full model and not answered yet. */
  let asked: string | null = null;
  /** How many full answers were missing when the plan on screen came to be. */
  let toDo = 0;
  const pace = paceKeeper(paces);
  let isStill = true;
  let standIn: ReturnType<typeof setTimeout> | undefined;
  /** The plan whose full answer the person would not wait for. */
  let stopped: SavedPlan | null = null;

  const answerOf = (one: Plan, plan: SavedPlan, model: AnswerModel) =>
    kept[model].get(keyOf(inModel(one, model), readoutRequest(plan)));
  const missing = (plan: SavedPlan, isGood: boolean, model: AnswerModel) =>
    designsOf(plan, isGood, model, readoutRequest(plan)).filter((one) => !kept[model].has(one.key));

  const pinsIn = (plan: SavedPlan, model: AnswerModel) =>
    ofPins(plan, (pin) => answerOf(pin.plan, plan, model), answers.getState().pinReadouts);

  /** Shows the best answer there is to a good plan; the model it is by, or null where there is none yet. */
  const show = (plan: SavedPlan): AnswerModel | null => {
    const { best } = answerModels(plan);
    const baseline = baselineOf(plan);
    for (const model of best) {
      const own = answerOf(plan, plan, model);
      // The full answer waits for the baseline's: figures that compare would else change their meaning twice.
      if (!own?.ok || (model === "full-wave" && baseline && !answerOf(baseline.plan, plan, model))) continue;
      const pinReadouts = pinsIn(plan, model);
      answers.setState({ readout: own.value, readoutPlan: plan, model, pinReadouts });
      return model;
    }
    return null;
  };

  /** Brings the answers up to date with what is known about the plan on screen; whether they are the best there can be. */
  const settle = (): boolean => {
    const { plan, verdict } = plans.getState();
    clearTimeout(patience);
    if (!verdict.ok) {
      const pinReadouts = pinsIn(plan, answers.getState().model);
      answers.setState({ state: "old", problems: verdict.problems, refining: null, previewOnly: none, pinReadouts });
      return false;
    }
    const { best, obstacles } = answerModels(plan);
    const shown = show(plan);
    const results = best.map((model) => answerOf(plan, plan, model));
    const failures = results.flatMap((result) => (result && !result.ok ? result.problems : []));
    const isHopeless = shown === null && results.every((result) => result && !result.ok);
    const previewOnly = obstacles.length > 0 ? obstacles : shown === "preview" && failures.length > 0 ? failures : none;
    if (shown !== null) answers.setState({ state: "fresh", problems: none, previewOnly });
    else if (isHopeless) {
      const problems = results.length > 0 ? failures : obstacles;
      answers.setState({ state: "old", problems, previewOnly: none, refining: null });
    } else {
      const isFaulty = answers.getState().fault !== null;
      answers.setState({ state: isFaulty ? "old" : "working", problems: none, previewOnly });
      if (!best.includes("preview"))
        patience = setTimeout(() => answers.getState().readout && answers.setState({ state: "old" }), markOld_ms);
    }
    return shown === best[0] || isHopeless;
  };

  /** Asks for previews that are missing, unless the full answer is there already. */
  const preview = (isSettled: boolean) => {
    const { plan, verdict } = plans.getState();
    const isOfUse = verdict.ok ? answerModels(plan).best.includes("preview") : true;
    const wanted = isOfUse && !(isSettled && answers.getState().model === "full-wave");
    const next = wanted ? missing(plan, verdict.ok, "preview") : [];
    if (next.length === 0) prompt.forget();
    if (next.length === 0 || answers.getState().fault !== null) return bands.sweepSoon();
    const request = readoutRequest(plan);
    const ask: EngineAsk = { kind: "readouts", plans: next.map((one) => one.plan), request };
    const done = (answer: EngineAnswer) => {
      if (answer.kind !== "readouts") return;
      for (const [i, one] of next.entries()) kept.preview.set(one.key, answer.results[i]!);
      // A drag outruns the engine by a frame or two: what came back is shown, though the plan has moved on.
      if (verdict.ok && plans.getState().plan !== plan) show(plan);
      preview(settle());
    };
    // When an answer comes late, the next question is with the worker already: by its name it is not sent again and
    // solved twice, which would make the one after it late as well.
    prompt.ask(ask, done, undefined, next.map((one) => one.key).join());
  };

  const keepsPace = (plan: SavedPlan) =>
    pace.keepsPace(plan.elements.reduce((sum, { radials }) => sum + radials.count, 0)) &&
    missing(plan, true, "full-wave").length <= 1;

  /**
   * Asks for the full answers that are missing, one design at a time, the one on screen first.
   *
   * @param isMoving in a drag: what is on its way is not worth a word
   */
  const refine = (isMoving = false) => {
    const { plan, verdict } = plans.getState();
    if (!asksForFull(plan, verdict.ok) || answers.getState().fault !== null || stopped === plan)
      return answers.setState({ refining: null });
    const left = missing(plan, true, "full-wave");
    const [next] = left;
    toDo = Math.max(toDo, left.length);
    answers.setState({ refining: next && !isMoving ? { done: toDo - left.length, total: toDo } : null });
    if (!next) return isMoving ? bands.sweepSoon() : bands.sweep();
    if (asked === next.key) return;
    asked = next.key;
    const isOwn = next.key === keyOf(inModel(plan, "full-wave"), readoutRequest(plan));
    const ask: EngineAsk = { kind: "readouts", plans: [next.plan], request: readoutRequest(plan) };
    const done = (answer: EngineAnswer, took_ms: number) => {
      if (answer.kind !== "readouts") return;
      // Kept though the plan may have moved on: it may come back. Shown only if it is still the plan on screen.
      kept["full-wave"].set(next.key, answer.results[0]!);
      if (asked === next.key) asked = null;
      // Of another design it says nothing.
      if (isOwn && isMoving) pace.movedFor(took_ms);
      else if (isOwn) pace.restedFor(took_ms);
      const current = plans.getState();
      // A drag outruns the engine by a frame or two: what came back is shown, though the plan has moved on.
      if (isMoving && current.verdict.ok && current.plan !== plan) show(plan);
      const isBest = settle();
      if (standIn !== undefined) {
        clearTimeout(standIn);
        standIn = isBest ? undefined : setTimeout(stepIn, paces.standIn_ms);
      }
      // While the plan moves, the next full answer waits for it to be still.
      if (current.plan === plan) refine(isMoving && !isStill);
    };
    full.ask(ask, done, (part) => {
      const { refining } = answers.getState();
      if (asked === next.key && refining) answers.setState({ refining: { ...refining, part } });
    });
  };

  /** The full answer, asked for alone, does not come: a preview takes its place until it does. */
  const stepIn = () => {
    standIn = undefined;
    pace.keptWaiting();
    preview(settle());
    if (asked !== null) answers.setState({ refining: { done: 0, total: toDo } });
  };

  /** The plan has been still for long enough: all that is missing is asked for. */
  const rest = () => {
    isStill = true;
    bands.rest();
    refine();
  };

  const asksForFull = (plan: SavedPlan, isGood: boolean) => isGood && answerModels(plan).best.includes("full-wave");

  /** The plan has changed: `after_ms` of stillness from now, the full answer is asked for. */
  const follow = (after_ms: number) => {
    const { plan, verdict } = plans.getState();
    clearTimeout(stillness);
    isStill = after_ms === 0;
    if (stopped !== plan) {
      stopped = null;
      answers.setState({ isStopped: false });
    }
    const isFull = asksForFull(plan, verdict.ok);
    const wanted = new Set(isFull ? missing(plan, true, "full-wave").map((one) => one.key) : []);
    full.outdate((ask) => ask.kind === "readouts" && ask.plans.some((one) => wanted.has(keyOf(one, ask.request))));
    if (asked !== null && !wanted.has(asked)) asked = null;
    bands.outdate();
    const isSettled = settle();
    toDo = wanted.size;
    const isAtOnce = isFull && !isStill && keepsPace(plan);
    if (!isAtOnce) preview(isSettled);
    if (isStill) return rest();
    stillness = setTimeout(rest, after_ms);
    if (!isFull) return answers.setState({ refining: null });
    if (!isAtOnce) return answers.setState({ refining: toDo > 0 ? { done: 0, total: toDo } : null });
    prompt.forget();
    standIn ??= setTimeout(stepIn, paces.standIn_ms);
    refine(true);
  };

  const stopListening = plans.subscribe((state, before) => {
    if (state.plan !== before.plan) answers.together(() => follow(still_ms));
  });
  answers.together(() => follow(0));

  return {
    stopFull() {
      clearTimeout(stillness);
      clearTimeout(standIn);
      standIn = undefined;
      stopped = plans.getState().plan;
      asked = null;
      full.forget();
      full.abort();
      answers.setState({ refining: null, isStopped: true });
    },
    goOn() {
      stopped = null;
      answers.setState({ isStopped: false });
      refine();
    },
    retry() {
      answers.together(() => {
        answers.setState({ fault: null });
        asked = null;
        bands.restart();
        follow(0);
      });
    },
    stop() {
      stopListening();
      clearTimeout(stillness);
      clearTimeout(standIn);
      clearTimeout(patience);
      prompt.stop();
      full.stop();
      bands.stop();
    },
  };
}
