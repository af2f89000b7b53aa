import type { BandReadout, Plan, PlanReadout, Problem } from "../../engine/index.ts";
import type { AnswerModel } from "./answerModels.ts";

/**
 * - "fresh": `readout` belongs to the plan on screen.
 * - "working": the plan is good and its answer is on the way (a few ms; views should not flicker over it).
 * - "old": no answer can come for the plan as it stands (it has problems, or the engine has failed), or none that comes
 *   at once; what is shown is the last good one and must be marked as such.
 */
export type AnswerState = "fresh" | "working" | "old";

/** What the engine says of the plan on screen and of the pinned designs. */
export interface Answer {
  readonly readout: PlanReadout | null;
  /** The plan that `readout` belongs to. */
  readonly readoutPlan: Plan | null;
  readonly state: AnswerState;
  /** By which model `readout` and all of `pinReadouts` were worked out: never some by one and some by the other. */
  readonly model: AnswerModel;
  /** The full answer to the plan on screen is on its way: how many of the solutions it takes are done, and of the next 0..1. */
  readonly refining: { readonly done: number; readonly total: number; readonly part?: number } | null;
  /** The person would not wait for the full answer to the plan on screen. */
  readonly isStopped: boolean;
  /** Few radials: what the full answer would be if they lay otherwise; null while not known, or where it matters little. */
  readonly layings: Layings | null;
  /** Why the plan on screen, which asks for the full answer, has to do with the preview. */
  readonly previewOnly: readonly Problem[];
  /** What has to be put right before a new answer can come; all of it. */
  readonly problems: readonly Problem[];
  readonly band: BandReadout | null;
  /** The plan that `band` belongs to; it follows `readoutPlan` after a moment. */
  readonly bandPlan: Plan | null;
  /** By which model `band` and all of `pinBands` were worked out. */
  readonly bandModel: AnswerModel;
  /** By pin id. A pin whose answer is still on the way, or that the model cannot take, is absent. */
  readonly pinReadouts: Readonly<Record<string, PlanReadout>>;
  readonly pinBands: Readonly<Record<string, BandReadout>>;
  /** The engine itself broke (not the plan): what to tell the person; null when all is well. */
  readonly fault: string | null;
}

export interface Layings {
  /** The plan they are variants of. */
  readonly plan: Plan;
  readonly rows: readonly { readonly height_m: number; readonly readout: PlanReadout }[];
}

/** Before anything was asked. */
export const noAnswer: Answer = {
  readout: null,
  readoutPlan: null,
  state: "working",
  model: "preview",
  refining: null,
  isStopped: false,
  layings: null,
  previewOnly: [],
  problems: [],
  band: null,
  bandPlan: null,
  bandModel: "preview",
  pinReadouts: {},
  pinBands: {},
  fault: null,
};
