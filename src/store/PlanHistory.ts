import type { Plan, Result, SavedPlan } from "../../engine/index.ts";

/** The one document of the page, the engine's verdict on exactly that document, and the way back. */
export interface PlanHistory {
  /** What the person set down, right or wrong. */
  readonly plan: SavedPlan;
  /** Set in the same step as `plan`, so never a verdict on another plan. */
  readonly verdict: Result<Plan>;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What undo would take back, in words, e.g. "move the reflector"; null when there is nothing. */
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;

  /**
   * Replaces the plan by `change(plan)`. `label` completes "Undo: …", e.g. "move the reflector".
   * Edits in a row with the same `mergeKey` become one undo step (a drag, a run of arrow keys) until `sealEdit`,
   * an edit with another key, or undo. Returning the same object changes nothing and leaves no step.
   */
  edit(change: (plan: SavedPlan) => SavedPlan, label: string, mergeKey?: string): void;
  /** Call when a drag ends or a field loses focus: the next edit starts a new undo step. */
  sealEdit(): void;
  undo(): void;
  redo(): void;
  /** Puts another document in place, as one undo step, so that what was there can be had back. */
  open(plan: SavedPlan, label?: string): void;
  /** Puts a document in place with an empty history: only at start. */
  start(plan: SavedPlan): void;
}
