import { answerRequest } from "../../../src/worker/answerRequest.ts";
import type { EngineReply, EngineRequest } from "../../../src/worker/EngineMessage.ts";
import type { EngineWorker } from "../../../src/worker/EngineWorker.ts";

/** A worker with the real engine in it that answers only when it is told to, so that a test decides who is late. */
export interface HeldWorker extends EngineWorker {
  readonly asked: EngineRequest[];
  readonly isGone: boolean;
  /** Answers the oldest question, said to have taken so long; false when there is none. */
  answer(took_ms?: number): boolean;
  say(reply: EngineReply): void;
}

/** A `makeWorker` whose workers are listed as they are started. */
export function heldWorkers(): {
  readonly workers: HeldWorker[];
  make(): EngineWorker;
  answerAll(): void;
  answerReadouts(): void;
} {
  const workers: HeldWorker[] = [];
  return {
    workers,
    make() {
      const asked: EngineRequest[] = [];
      let isGone = false;
      const worker: HeldWorker = {
        asked,
        get isGone() {
          return isGone;
        },
        onmessage: null,
        onerror: null,
        postMessage: (request) => void asked.push(structuredClone(request)),
        terminate() {
          isGone = true;
        },
        answer(took_ms = 0) {
          const request = asked.shift();
          if (!request) return false;
          const reply = answerRequest(request);
          worker.say("answer" in reply ? { ...reply, took_ms } : reply);
          return true;
        },
        say: (reply) => worker.onmessage?.({ data: structuredClone(reply) }),
      };
      workers.push(worker);
      return worker;
    },
    /** Leaves the sweeps waiting: they are many solves, and few tests are about them. */
    answerReadouts() {
      while (workers.some((worker) => !worker.isGone && worker.asked[0]?.ask.kind === "readouts" && worker.answer()));
    },
    answerAll() {
      while (workers.some((worker) => !worker.isGone && worker.answer()));
    },
  };
}
