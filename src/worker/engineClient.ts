import type { EngineAnswer, EngineAsk } from "./EngineMessage.ts";
import type { EngineWorker, MakeWorker } from "./EngineWorker.ts";

export interface EngineClient {
  /**
   * Asks; at most one question is with the worker and at most one waits. A newer question replaces the one that
   * waits, whose `done` is then never called. An answer always goes to the `done` of the question it belongs to;
   * before it, `onPart` may be told how much of it is done, 0..1. `took_ms` is the worker's own time for it.
   *
   * @param name what is asked, where it may be asked again before the answer is there: while a question of that name is
   *   with the worker it is not sent a second time; the `done` of the first then answers it
   */
  ask(
    ask: EngineAsk,
    done: (answer: EngineAnswer, took_ms: number) => void,
    onPart?: (part: number) => void,
    name?: string,
  ): void;
  /** Forgets the question that waits, if any. The one in flight still answers. */
  forget(): void;
  /** Ends the worker in the midst of what it does; its question is never answered. A question that waits is sent anew. */
  abort(): void;
  /**
   * Says what is wanted no longer. A question that waits is then forgotten. One in flight may still answer, and then
   * its `done` is called: what the worker has built for it serves the next one. But where it keeps another question
   * waiting for more than `patience_ms` from now, its worker is ended and a new one takes the question that waits.
   */
  outdate(isWanted: (ask: EngineAsk) => boolean): void;
  readonly isBusy: boolean;
  stop(): void;
}

/** About what it costs a new worker to build again what the old one had. */
export const patience_ms = 400;

interface Question {
  readonly id: number;
  readonly ask: EngineAsk;
  readonly done: (answer: EngineAnswer, took_ms: number) => void;
  readonly onPart: ((part: number) => void) | undefined;
  readonly name: string | undefined;
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
  /** When the answer in flight was outdated; null while it is wanted. */
  let outdated_ms: number | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;

  const end = () => {
    worker?.terminate();
    worker = null;
    inFlight = null;
    outdated_ms = null;
    if (timer !== null) clearTimeout(timer);
    timer = null;
  };

  /** Ends the worker when its outdated answer has kept a question waiting for long enough. */
  const watch = () => {
    if (outdated_ms === null || !waiting || timer !== null) return;
    timer = setTimeout(
      () => {
        timer = null;
        if (outdated_ms === null || !waiting) return;
        end();
        send();
      },
      Math.max(0, outdated_ms + patience_ms - Date.now()),
    );
  };

  const giveUp = (message: string) => {
    end();
    waiting = null;
    onFault(message);
  };

  const start = (): EngineWorker | null => {
    try {
      const started = makeWorker();
      started.onmessage = ({ data }) => {
        if (worker !== started || data.id !== inFlight?.id) return;
        if ("part" in data) return inFlight.onPart?.(data.part);
        if ("thrown" in data) return giveUp(data.thrown);
        const { done } = inFlight;
        inFlight = null;
        outdated_ms = null;
        if (timer !== null) clearTimeout(timer);
        timer = null;
        send();
        done(data.answer, data.took_ms);
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
    ask(ask, done, onPart, name) {
      waiting = null;
      if (name !== undefined && inFlight?.name === name) return;
      waiting = { id: ++lastId, ask, done, onPart, name };
      send();
      watch();
    },
    forget() {
      waiting = null;
    },
    abort() {
      if (inFlight) end();
      send();
    },
    outdate(isWanted) {
      if (waiting && !isWanted(waiting.ask)) waiting = null;
      if (inFlight) outdated_ms = isWanted(inFlight.ask) ? null : (outdated_ms ?? Date.now());
    },
    get isBusy() {
      return inFlight !== null;
    },
    stop() {
      end();
      waiting = null;
    },
  };
}
