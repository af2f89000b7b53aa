import type { BandReadout, Plan, PlanReadout, Problem } from "../../engine/index.ts";

/**
 * - "fresh": `readout` belongs to the plan on screen.
 * - "working": the plan is good and its answer is on the way (a few ms; views should not flicker over it).
 * - "old": no answer can come for the plan as it stands (it has problems, or the engine has failed); what is shown
 *   is the last good one and must be marked as such.
 */
export type AnswerState = "fresh" | "working" | "old";

/** What the engine says of the plan on screen and of the pinned designs. */
export interface Answer {
  readonly readout: PlanReadout | null;
  /** The plan that `readout` belongs to. */
  readonly readoutPlan: Plan | null;
  readonly state: AnswerState;
  /** What has to be put right before a new answer can come; all of it. */
  readonly problems: readonly Problem[];
  readonly band: BandReadout | null;
  /** The plan that `band` belongs to; it follows `readoutPlan` after a moment. */
  readonly bandPlan: Plan | null;
  /** By pin id. A pin whose answer is still on the way is absent. */
  readonly pinReadouts: Readonly<Record<string, PlanReadout>>;
  readonly pinBands: Readonly<Record<string, BandReadout>>;
  /** The engine itself broke (not the plan): what to tell the person; null when all is well. */
  readonly fault: string | null;
}
