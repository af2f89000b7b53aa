import {
  type ArraySample,
  askKey,
  type Result,
  type Trial,
  type TrialAsk,
  type TrialPicture,
  type TrialRequest,
  type TrialStep,
} from "../../../engine/index.ts";
import type { Hand } from "./Hand.ts";
import { onceEach, spreadAsks } from "./spreadAsks.ts";
import type { BatchReply, TrialProgress, TrialReport } from "./TrialMessage.ts";
import { tablesKey } from "./tablesKey.ts";

/** A batch is worth about this much of a hand's time: messages then cost little, and a stop is soon obeyed. */
const batch_ms = 60;
const mostInBatch = 24;
/** A trial looks at what has come in this often at most before all it asked for is there … */
const look_ms = 300;
/** … and spends no more than this part of the time on looking. */
const lookPart = 0.2;
/** A picture on the way is sent this often at most, and takes no more than that part of the time either. */
const picture_ms = 300;
/** The page is told how far it is this often at most. */
const tell_ms = 100;
/** Samples kept for trials to come, some ten or twenty kilobytes each. */
const mostKept = 1500;

export interface TrialLeader {
  addHand(id: number, hand: Hand): void;
  loseHand(id: number): void;
  run(run: number, request: TrialRequest): void;
  stop(): void;
}

interface HandAtWork {
  readonly hand: Hand;
  readonly tables: Set<string>;
  /** What it is solving and what waits at its door. */
  readonly batches: Map<object, ReadonlyMap<string, TrialAsk>>;
  /** Mean of a solve; null before the first. */
  perAsk_ms: number | null;
}

interface Running {
  readonly run: number;
  readonly trial: Trial<TrialPicture>;
  waiting: Map<string, TrialAsk>;
  readonly from_ms: number;
  done: number;
  /** What was done of it when it began: not nothing, where samples were known. */
  partBefore: number | null;
  part: number;
  lookedAt_ms: number;
  look_ms: number;
  picturedAt_ms: number;
  picture_ms: number;
  toldAt_ms: number;
}

/**
 * Runs one trial at a time: asks its step function what it needs, spreads that over the hands there are, and tells
 * `report` how far it is and what can be shown. Answers are kept beyond the trial's end and its stop, so that the same
 * request goes on where it was, and another shares what it can.
 */
export function leadTrials(
  report: (message: TrialReport) => void,
  trialOf: (request: TrialRequest) => Result<Trial<TrialPicture>>,
  now_ms: () => number = () => performance.now(),
): TrialLeader {
  const hands = new Map<number, HandAtWork>();
  let known = new Map<string, Result<ArraySample>>();
  let running: Running | null = null;
  let stopped = 0;

  const busy = () => [...hands.values()].filter((one) => one.batches.size > 0).length;
  const isAsked = (key: string) => [...hands.values()].some((one) => [...one.batches.values()].some((b) => b.has(key)));
  const inFlight = () =>
    [...hands.values()].reduce((sum, one) => sum + [...one.batches.values()].reduce((n, b) => n + b.size, 0), 0);

  const progressOf = (one: Running): TrialProgress => {
    const passed_ms = now_ms() - one.from_ms;
    const open = one.waiting.size + inFlight();
    const gained = one.part - (one.partBefore ?? 0);
    // The trial knows best what is still to come; until it has told, what it has asked for so far.
    const byPart = gained > 0.02 ? (passed_ms * (1 - one.part)) / gained : null;
    const byCount = one.done > 0 ? (passed_ms * open) / one.done : null;
    const left_ms = byPart === null ? byCount : Math.max(byPart, byCount ?? 0);
    return { done: one.done, total: one.done + open, part: one.part, left_ms };
  };

  /** Asks the trial what it makes of what is known, and sends on what it asks for. */
  const look = (one: Running) => {
    const from_ms = now_ms();
    let step: ReturnType<Trial<TrialPicture>>;
    try {
      step = one.trial((ask) => known.get(askKey(ask)));
    } catch (error) {
      end({ run: one.run, kind: "thrown", message: wordsOf(error), busy: busy() });
      return;
    }
    one.lookedAt_ms = now_ms();
    one.look_ms = one.lookedAt_ms - from_ms;
    if (!step.ok) return end({ run: one.run, kind: "failed", problems: step.problems, busy: busy() });
    const { asks, part } = step.value;
    one.part = part;
    one.partBefore ??= part;
    one.waiting = onceEach(asks, (key) => known.has(key) || isAsked(key));
    if (asks.length === 0)
      return end({ run: one.run, kind: "done", progress: progressOf(one), picture: step.value.picture, busy: busy() });
    if (one.waiting.size === 0 && inFlight() === 0)
      return end({ run: one.run, kind: "thrown", message: "a trial asks for what it was told already", busy: busy() });
    // Hands first: a picture takes a while.
    spread(one);
    const picture = isPictureDue(one) ? pictureOf(one, step.value) : null;
    one.toldAt_ms = now_ms();
    report({ run: one.run, kind: "going", progress: progressOf(one), busy: busy(), ...(picture && { picture }) });
  };

  const isPictureDue = (one: Running) =>
    now_ms() - one.picturedAt_ms > picture_ms && one.picture_ms < lookPart * (now_ms() - one.picturedAt_ms);

  const pictureOf = (one: Running, step: TrialStep<TrialPicture>) => {
    const from_ms = now_ms();
    const { picture } = step;
    one.picturedAt_ms = now_ms();
    one.picture_ms = one.picturedAt_ms - from_ms;
    return picture;
  };

  const end = (last: TrialReport) => {
    running = null;
    stopped = 0;
    report(last);
  };

  const send = (one: HandAtWork, asks: ReadonlyMap<string, TrialAsk>) => {
    const batch = {};
    one.batches.set(batch, asks);
    for (const ask of asks.values()) one.tables.add(tablesKey(ask));
    one.hand.ask([...asks.values()], (reply) => {
      if (!one.batches.delete(batch)) return;
      take(one, asks, reply);
    });
  };

  const take = (one: HandAtWork, asks: ReadonlyMap<string, TrialAsk>, reply: BatchReply) => {
    if ("thrown" in reply) {
      if (running) end({ run: running.run, kind: "thrown", message: reply.thrown, busy: busy() });
      else rest();
      return;
    }
    for (const [i, key] of [...asks.keys()].entries()) known.set(key, reply.results[i]!);
    const perAsk_ms = reply.spent_ms / asks.size;
    one.perAsk_ms = one.perAsk_ms === null ? perAsk_ms : (one.perAsk_ms + perAsk_ms) / 2;
    if (!running) return rest();
    running.done += asks.size;
    // Hands first: looking takes a while.
    spread(running);
    const since_ms = now_ms() - running.lookedAt_ms;
    const isDue = since_ms > look_ms && running.look_ms < lookPart * since_ms;
    const isAll = running.waiting.size === 0 && inFlight() === 0;
    if (isAll || isDue) look(running);
    else if (now_ms() - running.toldAt_ms > tell_ms) {
      running.toldAt_ms = now_ms();
      report({ run: running.run, kind: "going", progress: progressOf(running), busy: busy() });
    }
  };

  /** A hand has come to rest after a stop. */
  const rest = () => {
    if (stopped > 0) report({ run: stopped, kind: "stopped", busy: busy() });
  };

  const spread = (one: Running) => {
    for (let turn = 0; turn < 2; turn++)
      for (const at of hands.values()) {
        const pace_ms = at.perAsk_ms;
        // A second batch waits at the door of a quick hand, so that it need not wait for this one; not where that would
        // leave the others without.
        const isQuick = pace_ms !== null && pace_ms < batch_ms / 2 && one.waiting.size >= 2 * hands.size;
        if (at.batches.size > (turn === 1 && isQuick ? 1 : 0)) continue;
        const share = Math.ceil(one.waiting.size / hands.size);
        const most = Math.min(share, mostInBatch, pace_ms === null ? 1 : Math.max(1, Math.floor(batch_ms / pace_ms)));
        const others = [...hands.values()].filter((other) => other !== at);
        const asks = onceEach(spreadAsks([...one.waiting.values()], at, others, most), () => false);
        if (asks.size === 0) continue;
        for (const key of asks.keys()) one.waiting.delete(key);
        send(at, asks);
      }
  };

  return {
    addHand(id, hand) {
      hands.set(id, { hand, tables: new Set(), batches: new Map(), perAsk_ms: null });
      if (running) spread(running);
    },
    loseHand(id) {
      const lost = hands.get(id);
      if (!lost) return;
      hands.delete(id);
      lost.hand.close();
      if (running) {
        for (const batch of lost.batches.values()) for (const [key, ask] of batch) running.waiting.set(key, ask);
        spread(running);
      } else rest();
    },
    run(run, request) {
      stopped = 0;
      if (known.size > mostKept) known = new Map([...known].slice(-mostKept / 2));
      const trial = trialOf(request);
      if (!trial.ok) return end({ run, kind: "failed", problems: trial.problems, busy: busy() });
      const from_ms = now_ms();
      running = {
        run,
        trial: trial.value,
        waiting: new Map(),
        from_ms,
        done: 0,
        partBefore: null,
        part: 0,
        lookedAt_ms: from_ms,
        look_ms: 0,
        picturedAt_ms: Number.NEGATIVE_INFINITY,
        picture_ms: 0,
        toldAt_ms: from_ms,
      };
      look(running);
    },
    stop() {
      if (!running) return;
      stopped = running.run;
      running = null;
      rest();
    },
  };
}

const wordsOf = (error: unknown) => (error instanceof Error ? error.message : String(error));
