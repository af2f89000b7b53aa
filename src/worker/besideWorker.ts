import { answerRequest } from "./answerRequest.ts";
import type { EngineWorker } from "./EngineWorker.ts";

/** The same engine code without a worker, one task later: for tests, and for browsers that refuse workers. */
export function besideWorker(): EngineWorker {
  let alive = true;
  const worker: EngineWorker = {
    onmessage: null,
    onerror: null,
    postMessage(request) {
      setTimeout(() => {
        if (alive) worker.onmessage?.({ data: answerRequest(request) });
      }, 0);
    },
    terminate() {
      alive = false;
    },
  };
  return worker;
}
