import type { BandReadout, Plan, PlanReadout, Result, SavedPlan } from "../../engine/index.ts";
import type { MakeWorker } from "../worker/EngineWorker.ts";
import { engineClient } from "../worker/engineClient.ts";
import type { Answer } from "./Answer.ts";
import { bandRequest } from "./bandRequest.ts";
import type { PlanHistory } from "./PlanHistory.ts";
import { readoutRequest } from "./readoutRequest.ts";
import { solverPlan } from "./solverPlan.ts";

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
const longestMemory = 40;

/**
 * Keeps `answers` in step with `plans`: asks the engine whenever the plan changes, shows only answers that belong to
 * the plan on screen (or says that they are old), and sweeps the band when the main answer is there.
 *
 * Two workers: the SWR sweep takes many solves, and must never hold up the answer to a moving finger.
 */
export function followPlan(plans: Readable<PlanHistory>, answers: Writable<Answer>, makeWorker: MakeWorker): Follower {
  const onFault = (message: string) => answers.setState({ state: "old", fault: message });
  const prompt = engineClient(makeWorker, onFault);
  const aside = engineClient(makeWorker, onFault);
  const readouts = new Memory<Result<PlanReadout>>(longestMemory);
  const bands = new Memory<Result<BandReadout>>(longestMemory);

  /** Shows what is known about the plan on screen; asks for what is not. */
  const follow = () => {
    const { plan, verdict } = plans.getState();
    const { fault } = answers.getState();
    const request = readoutRequest(plan);
    const pins = plan.pins ?? [];
    if (!verdict.ok) {
      prompt.forget();
      answers.setState({ state: "old", problems: verdict.problems });
    }

    const wanted = (verdict.ok ? [plan, ...pins.map((pin) => pin.plan)] : pins.map((pin) => pin.plan)).map(solverPlan);
    const missing = distinct(wanted, (one) => keyOf(one, request)).filter((one) => !readouts.has(keyOf(one, request)));
    if (missing.length === 0) {
      showReadouts(plan, verdict.ok);
      sweep();
    } else if (!fault) {
      if (verdict.ok) answers.setState({ state: "working", problems: [] });
      prompt.ask({ kind: "readouts", plans: missing, request }, (answer) => {
        if (answer.kind !== "readouts") return;
        missing.forEach((one, i) => readouts.set(keyOf(one, request), answer.results[i]!));
        // A drag outruns the engine by a frame or two: what came back is shown, though the plan has moved on.
        if (plans.getState().plan !== plan && verdict.ok) showMovedOn(plan);
        follow();
      });
    }
  };

  const pinReadoutsOf = (plan: SavedPlan) => {
    const request = readoutRequest(plan);
    return collect(plan, (pin) => readouts.get(keyOf(solverPlan(pin.plan), request)));
  };

  const showReadouts = (plan: SavedPlan, isGood: boolean) => {
    const pinReadouts = pinReadoutsOf(plan);
    if (!isGood) return answers.setState({ pinReadouts });
    const found = readouts.get(keyOf(solverPlan(plan), readoutRequest(plan)))!;
    if (found.ok)
      answers.setState({ readout: found.value, readoutPlan: plan, state: "fresh", problems: [], pinReadouts });
    else answers.setState({ state: "old", problems: found.problems, pinReadouts });
  };

  const showMovedOn = (plan: SavedPlan) => {
    const found = readouts.get(keyOf(solverPlan(plan), readoutRequest(plan)));
    if (found?.ok) answers.setState({ readout: found.value, readoutPlan: plan, pinReadouts: pinReadoutsOf(plan) });
  };

  /** One sweep at a time: the plan on screen first, then the pins. Whoever is asked for next is chosen anew each time. */
  const sweep = () => {
    const { plan, verdict } = plans.getState();
    const request = bandRequest(plan);
    const pins = plan.pins ?? [];
    const own = bands.get(keyOf(solverPlan(plan), request));
    if (own?.ok && verdict.ok) answers.setState({ band: own.value, bandPlan: plan });
    answers.setState({ pinBands: collect(plan, (pin) => bands.get(keyOf(solverPlan(pin.plan), request))) });
    if (answers.getState().fault) return;
    const next = (verdict.ok ? [plan, ...pins.map((pin) => pin.plan)] : pins.map((pin) => pin.plan))
      .map(solverPlan)
      .find((one) => !bands.has(keyOf(one, request)));
    if (!next) return;
    aside.ask({ kind: "band", plan: next, request }, (answer) => {
      if (answer.kind !== "band") return;
      bands.set(keyOf(next, request), answer.result);
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

function keyOf(plan: Plan, request: object): string {
  // The title does not change a number.
  return JSON.stringify([{ ...plan, title: "" }, request]);
}

function distinct<T>(items: readonly T[], key: (item: T) => string): T[] {
  return [...new Map(items.map((item) => [key(item), item])).values()];
}

function collect<T>(
  plan: SavedPlan,
  find: (pin: NonNullable<SavedPlan["pins"]>[number]) => Result<T> | undefined,
): Record<string, T> {
  const found: Record<string, T> = {};
  for (const pin of plan.pins ?? []) {
    const answer = find(pin);
    if (answer?.ok) found[pin.id] = answer.value;
  }
  return found;
}

/** Keeps the answers used last. */
class Memory<T> {
  private readonly kept = new Map<string, T>();
  private readonly longest: number;
  constructor(longest: number) {
    this.longest = longest;
  }
  has(key: string): boolean {
    return this.kept.has(key);
  }
  get(key: string): T | undefined {
    const found = this.kept.get(key);
    if (found !== undefined) {
      this.kept.delete(key);
      this.kept.set(key, found);
    }
    return found;
  }
  set(key: string, value: T): void {
    this.kept.delete(key);
    this.kept.set(key, value);
    if (this.kept.size > this.longest) this.kept.delete(this.kept.keys().next().value!);
  }
}
