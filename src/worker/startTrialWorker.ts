import EngineScript from "./engine.worker.ts?worker&inline";
import type { TrialWorker } from "./trial/TrialWorker.ts";

/** One more of the engine's workers, to lead a trial or to solve for one: the same script, told so by its first message. */
export function startTrialWorker(): TrialWorker {
  return new EngineScript({ name: "hindwire trial" }) as unknown as TrialWorker;
}
