import type { EngineReply, EngineRequest } from "./EngineMessage.ts";

/** The part of a browser's `Worker` that the page uses, so that tests can pass one that runs beside them. */
export interface EngineWorker {
  postMessage(request: EngineRequest): void;
  terminate(): void;
  onmessage: ((event: { readonly data: EngineReply }) => void) | null;
  /** Fires without a message when the worker could not start at all. */
  onerror: ((event: { readonly message?: string }) => void) | null;
}

export type MakeWorker = () => EngineWorker;
