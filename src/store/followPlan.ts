import type { BandReadout, PinnedPlan, Plan, PlanReadout, Result, SavedPlan } from "../../engine/index.ts";
import { corePlan } from "../../engine/index.ts";
import type { MakeWorker } from "../worker/EngineWorker.ts";
import { engineClient } from "../worker/engineClient.ts";
import type { Answer } from "./Answer.ts";
import { bandRequest } from "./bandRequest.ts";
import type { PlanHistory } from "./PlanHistory.ts";
import { readoutRequest } from "./readoutRequest.ts";
import { recentlyUsed } from "./recentlyUsed.ts";

interface Readable<T> {
  getState(): T;
  subscribe(listener: (state: T, before: T) => void): () => void;
}
interface Writable<T> {
  getState(): T;
  setState(part: Partial<T>): void;
}

export interface Follower {
  /** After a fault: start the engine again and ask for what is on screen. */
  retry(): void;
  stop(): void;
}

/** Answers kept for pinned plans and for undo: the answers of one plan are about 30 kB. */
const mostKept = 40;

/**
 * Keeps `answers` in step with `plans`: asks the engine whenever the plan changes, shows only answers that belong to
 * the plan on screen (or says that they do not), and sweeps the band once the main answer is there.
 *
 * Two workers: the sweep takes many solves, and must never hold up the answer to a moving finger.
 */
export function followPlan(plans: Readable<PlanHistory>, answers: Writable<Answer>, makeWorker: MakeWorker): Follower {
  const onFault = (message: string) => answers.setState({ state: "old", fault: message });
  const prompt = engineClient(makeWorker, onFault);
  const aside = engineClient(makeWorker, onFault);
  const readouts = recentlyUsed<Result<PlanReadout>>(mostKept);
  const bands = recentlyUsed<Result<BandReadout>>(mostKept);

  const readoutOf = (one: Plan, plan: SavedPlan) => readouts.get(keyOf(one, readoutRequest(plan)));
  const bandOf = (one: Plan, plan: SavedPlan) => bands.get(keyOf(one, bandRequest(plan)));

  /** Shows what is known about the plan on screen; asks for what is not. */
  const follow = () => {
    const { plan, verdict } = plans.getState();
    const request = readoutRequest(plan);
    if (!verdict.ok) {
      prompt.forget();
      answers.setState({ state: "old", problems: verdict.problems });
    }
    const missing = wantedOf(plan, verdict.ok).filter((one) => !readouts.has(keyOf(one, request)));
    if (missing.length === 0) {
      showReadouts(plan, verdict.ok);
      sweep();
    } else if (answers.getState().fault === null) {
      if (verdict.ok) answers.setState({ state: "working", problems: [] });
      prompt.ask({ kind: "readouts", plans: missing, request }, (answer) => {
        if (answer.kind !== "readouts") return;
        for (const [i, one] of missing.entries()) readouts.set(keyOf(one, request), answer.results[i]!);
        // A drag outruns the engine by a frame or two: what came back is shown, though the plan has moved on.
        if (verdict.ok && plans.getState().plan !== plan) showPassed(plan);
        follow();
      });
    } else if (verdict.ok) answers.setState({ state: "old", problems: [] });
  };

  const showReadouts = (plan: SavedPlan, isGood: boolean) => {
    const pinReadouts = ofPins(plan, (pin) => readoutOf(pin.plan, plan));
    const found = isGood ? readoutOf(plan, plan) : undefined;
    if (!found) answers.setState({ pinReadouts });
    else if (found.ok)
      answers.setState({ readout: found.value, readoutPlan: plan, state: "fresh", problems: [], pinReadouts });
    else answers.setState({ state: "old", problems: found.problems, pinReadouts });
  };

  const showPassed = (plan: SavedPlan) => {
    const found = readoutOf(plan, plan);
    const pinReadouts = ofPins(plan, (pin) => readoutOf(pin.plan, plan));
    if (found?.ok) answers.setState({ readout: found.value, readoutPlan: plan, pinReadouts });
  };

  /** One sweep at a time, the plan on screen before the pins; what is next is chosen anew each time. */
  const sweep = () => {
    const { plan, verdict } = plans.getState();
    const request = bandRequest(plan);
    const own = verdict.ok ? bandOf(plan, plan) : undefined;
    if (own?.ok) answers.setState({ band: own.value, bandPlan: plan });
    answers.setState({ pinBands: ofPins(plan, (pin) => bandOf(pin.plan, plan)) });

    const next = wantedOf(plan, verdict.ok).find((one) => !bands.has(keyOf(one, request)));
    if (!next || answers.getState().fault !== null) return;
    aside.ask({ kind: "band", plan: next, request }, (answer) => {
      if (answer.kind !== "band") return;
      bands.set(keyOf(next, request), answer.result);
      // While a drag goes on the newest finished sweep is shown, with the plan it belongs to.
      const passed = plans.getState().plan === plan ? undefined : bandOf(plan, plan);
      if (verdict.ok && passed?.ok) answers.setState({ band: passed.value, bandPlan: plan });
      if (answers.getState().state !== "working") sweep();
    });
  };

  const stopListening = plans.subscribe((state, before) => {
    if (state.plan !== before.plan) follow();
  });
  follow();

  return {
    retry() {
      answers.setState({ fault: null });
      follow();
    },
    stop() {
      stopListening();
      prompt.stop();
      aside.stop();
    },
  };
}

/** The title does not change a number, and no two plans that differ in it alone need solving twice. */
function keyOf(plan: Plan, request: object): string {
  return JSON.stringify([{ ...corePlan(plan), title: "" }, request]);
}

/** The plan on screen, when it is sound, and the pinned ones; each design once. */
function wantedOf(plan: SavedPlan, isGood: boolean): Plan[] {
  const all = [...(isGood ? [plan] : []), ...(plan.pins ?? []).map((pin) => pin.plan)].map(corePlan);
  return [...new Map(all.map((one) => [keyOf(one, {}), one])).values()];
}

function ofPins<T>(plan: SavedPlan, find: (pin: PinnedPlan) => Result<T> | undefined): Record<string, T> {
  const found: Record<string, T> = {};
  for (const pin of plan.pins ?? []) {
    const answer = find(pin);
    if (answer?.ok) found[pin.id] = answer.value;
  }
  return found;
}
