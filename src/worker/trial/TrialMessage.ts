import type { ArraySample, Problem, Result, TrialAsk, TrialPicture, TrialRequest } from "../../../engine/index.ts";

/** What the page says to the worker that leads a trial. */
export type LeadMessage =
  /** A worker that solves stands at the other end of `port`. */
  | { readonly lead: "hand"; readonly hand: number; readonly port: MessagePort }
  /** … and stands there no more: what it was asked has to be asked of another. */
  | { readonly lead: "lose"; readonly hand: number }
  /** Takes the place of the trial that runs, if any. */
  | { readonly lead: "run"; readonly run: number; readonly request: TrialRequest }
  /** No more asks go out. What is known stays known, so that the same request goes on from there. */
  | { readonly lead: "stop" };

/** What the page says to a worker that is to solve for a leader. */
export interface SolveMessage {
  readonly solveFor: MessagePort;
}

/** What the page says to a worker that will soon be asked for something: see `warmUp`. It drops it once it is. */
export interface WarmMessage {
  readonly warm: readonly TrialRequest[];
  readonly as: "leads" | "solves";
}

/** How far a trial is. */
export interface TrialProgress {
  /** Solves answered since it was started, and those it has asked for so far. */
  readonly done: number;
  readonly total: number;
  /** Of the whole trial, 0..1, as the trial itself sees it. */
  readonly part: number;
  /** From the pace so far; null while there is none. */
  readonly left_ms: number | null;
}

/** What the leader says of a trial. `busy`: how many workers are solving. */
export type TrialReport =
  | {
      readonly run: number;
      readonly kind: "going";
      readonly progress: TrialProgress;
      readonly busy: number;
      /** Absent: as before. */
      readonly picture?: TrialPicture;
    }
  | {
      readonly run: number;
      readonly kind: "done";
      readonly progress: TrialProgress;
      readonly busy: number;
      readonly picture: TrialPicture | null;
    }
  | { readonly run: number; readonly kind: "failed"; readonly problems: readonly Problem[]; readonly busy: number }
  /** An error of ours, not of the request's. */
  | { readonly run: number; readonly kind: "thrown"; readonly message: string; readonly busy: number }
  /** After a stop, and each time a worker has come to rest since. */
  | { readonly run: number; readonly kind: "stopped"; readonly busy: number };

/** Between leader and solver. */
export interface AskBatch {
  readonly batch: number;
  readonly asks: readonly TrialAsk[];
}
export type BatchReply =
  | { readonly batch: number; readonly results: readonly Result<ArraySample>[]; readonly spent_ms: number }
  | { readonly batch: number; readonly thrown: string };
