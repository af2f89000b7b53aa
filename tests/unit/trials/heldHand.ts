import { arraySample, type TrialAsk } from "../../../engine/index.ts";
import type { Hand } from "../../../src/worker/trial/Hand.ts";
import type { BatchReply } from "../../../src/worker/trial/TrialMessage.ts";

/** A hand with the real solver in it that answers only when it is told to. */
export interface HeldHand extends Hand {
  /** Every ask it was ever sent, in order. */
  readonly asked: TrialAsk[];
  /** As they came, batch by batch. */
  readonly batches: (readonly TrialAsk[])[];
  readonly waiting: number;
  readonly isClosed: boolean;
  /** Answers its oldest batch; false when there is none. */
  answer(): boolean;
  /** Fails at its oldest batch. */
  fail(message: string): void;
}

export function heldHand(): HeldHand {
  const asked: TrialAsk[] = [];
  const batches: (readonly TrialAsk[])[] = [];
  const open: { readonly asks: readonly TrialAsk[]; readonly done: (reply: BatchReply) => void }[] = [];
  let isClosed = false;
  return {
    asked,
    batches,
    get waiting() {
      return open.length;
    },
    get isClosed() {
      return isClosed;
    },
    ask(asks, done) {
      asked.push(...asks);
      batches.push(asks);
      open.push({ asks, done });
    },
    close() {
      isClosed = true;
    },
    answer() {
      const next = open.shift();
      if (!next) return false;
      next.done({ batch: 0, results: next.asks.map((ask) => arraySample(ask)), spent_ms: 10 * next.asks.length });
      return true;
    },
    fail(message) {
      open.shift()?.done({ batch: 0, thrown: message });
    },
  };
}
