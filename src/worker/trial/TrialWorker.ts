import type { LeadMessage, SolveMessage, TrialReport, WarmMessage } from "./TrialMessage.ts";

/** The part of a browser's `Worker` that trials use, so that tests can pass one that runs beside them. */
export interface TrialWorker {
  postMessage(message: LeadMessage | SolveMessage | WarmMessage, transfer: Transferable[]): void;
  terminate(): void;
  onmessage: ((event: { readonly data: TrialReport }) => void) | null;
  /** Fires without a message when the worker could not start at all. */
  onerror: ((event: { readonly message?: string }) => void) | null;
}

export type MakeTrialWorker = () => TrialWorker;
