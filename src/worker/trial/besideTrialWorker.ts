import type { TrialWorker } from "./TrialWorker.ts";
import { trialRole } from "./trialRole.ts";

/** The same code without a worker, one task later: for tests, and for browsers that refuse workers. */
export function besideTrialWorker(): TrialWorker {
  let alive = true;
  const worker: TrialWorker = {
    onmessage: null,
    onerror: null,
    postMessage(message) {
      setTimeout(() => alive && role(message), 0);
    },
    terminate() {
      alive = false;
    },
  };
  const role = trialRole((data) => alive && worker.onmessage?.({ data }));
  return worker;
}
