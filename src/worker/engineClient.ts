import type { EngineAnswer, EngineAsk } from "./EngineMessage.ts";
import type { EngineWorker, MakeWorker } from "./EngineWorker.ts";

export interface EngineClient {
  /**
   * Asks; at most one question is with the worker and at most one waits. A newer question replaces the one that
   * waits, whose `done` is then never called. An answer always goes to the `done` of the question it belongs to.
   */
  ask(ask: EngineAsk, done: (answer: EngineAnswer) => void): void;
  /** Forgets the question that waits, if any. The one in flight still answers. */
  forget(): void;
  readonly isBusy: boolean;
  stop(): void;
}

interface Question {
  readonly id: number;
  readonly ask: EngineAsk;
  readonly done: (answer: EngineAnswer) => void;
}

/**
 * One worker, newest question wins. `onFault` is told, in words for the person, when the worker cannot start or
 * throws; the worker is then given up, and the next `ask` starts another.
 */
export function engineClient(makeWorker: MakeWorker, onFault: (message: string) => void): EngineClient {
  let worker: EngineWorker | null = null;
  let inFlight: Question | null = null;
  let waiting: Question | null = null;
  let lastId = 0;

  const giveUp = (message: string) => {
    worker?.terminate();
    worker = null;
    inFlight = null;
    waiting = null;
    onFault(message);
  };

  const start = (): EngineWorker | null => {
    try {
      const started = makeWorker();
      started.onmessage = ({ data }) => {
        if (worker !== started || data.id !== inFlight?.id) return;
        if ("thrown" in data) return giveUp(data.thrown);
        const { done } = inFlight;
        inFlight = null;
        send();
        done(data.answer);
      };
      // A worker that the browser will not start reports nothing but this bare event.
      started.onerror = (event) => {
        if (worker === started) giveUp(event.message || "this browser did not start the background worker");
      };
      return started;
    } catch (error) {
      giveUp(error instanceof Error ? error.message : String(error));
      return null;
    }
  };

  const send = () => {
    if (inFlight || !waiting) return;
    worker ??= start();
    if (!worker || !waiting) return;
    inFlight = waiting;
    waiting = null;
    worker.postMessage({ id: inFlight.id, ask: inFlight.ask });
  };

  return {
    ask(ask, done) {
      waiting = { id: ++lastId, ask, done };
      send();
    },
    forget() {
      waiting = null;
    },
    get isBusy() {
      return inFlight !== null;
    },
    stop() {
      worker?.terminate();
      worker = null;
      inFlight = null;
      waiting = null;
    },
  };
}
