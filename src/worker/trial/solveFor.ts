import { arraySample, type TrialAsk } from "../../../engine/index.ts";
import type { AskBatch, BatchReply } from "./TrialMessage.ts";

/**
 * Answers what comes through `port`, batch by batch. `ready`, where given, is waited for first: it fetches what a
 * worker keeps from earlier visits.
 */
export function solveFor(port: MessagePort, ready?: (asks: readonly TrialAsk[]) => Promise<void> | undefined): void {
  const answer = (data: AskBatch) => port.postMessage(answerBatch(data));
  port.onmessage = ({ data }: MessageEvent<AskBatch>) => {
    const first = ready?.(data.asks);
    if (first) void first.then(() => answer(data));
    else answer(data);
  };
}

function answerBatch({ batch, asks }: AskBatch): BatchReply {
  const from_ms = performance.now();
  try {
    const results = asks.map((ask) => arraySample(ask));
    return { batch, results, spent_ms: performance.now() - from_ms };
  } catch (error) {
    return { batch, thrown: error instanceof Error ? error.message : String(error) };
  }
}
