import type { EngineWorker } from "./EngineWorker.ts";
import EngineScript from "./engine.worker.ts?worker&inline";

/** The engine in a worker of its own, from a blob inside this page: the only kind that starts from file://. */
export function startWorker(): EngineWorker {
  return new EngineScript({ name: "hindwire engine" }) as unknown as EngineWorker;
}
