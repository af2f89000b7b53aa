import type { Problem, SavedPlan, TrialPicture, TrialRequest } from "../../../engine/index.ts";
import type { TrialProgress } from "../../worker/trial/TrialMessage.ts";
import type { AnswerModel } from "../answerModels.ts";

export type TrialKind = TrialRequest["kind"];
export type PictureOf<K extends TrialKind> = Extract<TrialPicture, { readonly kind: K }>;

/** One trial in one model. */
export interface TrialStage {
  readonly model: AnswerModel;
  readonly request: TrialRequest;
}

/**
 * - "going": being worked out.
 * - "stopped": broken off by the person, or by a newer trial; it can go on.
 * - "done": all its stages are.
 * - "failed": it cannot be done as asked, or the engine broke.
 */
export type TrialState = "going" | "stopped" | "done" | "failed";

/** What was asked, what is shown of it, and how far it is. */
export interface TrialRun {
  readonly kind: TrialKind;
  /** The plan it belongs to. */
  readonly plan: SavedPlan;
  /** Names what was asked: see `trialKey`. */
  readonly key: string;
  /** Quick model first. */
  readonly stages: readonly TrialStage[];
  /** The stage that is worked on, or was last. */
  readonly stage: number;
  readonly state: TrialState;
  /** All of one model: never some figures by one and some by the other. */
  readonly picture: TrialPicture | null;
  readonly pictureModel: AnswerModel | null;
  /** Nothing is missing in the picture; else it is what can be shown so far. */
  readonly isWhole: boolean;
  /** When the picture's last part came. */
  readonly pictured_ms: number;
  readonly progress: TrialProgress | null;
  readonly problems: readonly Problem[];
  /** The engine broke: what to tell the person. */
  readonly fault: string | null;
}

export interface TrialRuns {
  readonly runs: { readonly [K in TrialKind]?: TrialRun };
  /** The one that is worked on. */
  readonly going: TrialKind | null;
  /** Workers that are solving. */
  readonly busy: number;
}
