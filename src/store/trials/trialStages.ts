import { drivenOf, reflectorOf, type SavedPlan, withElementHeight, withSpacing } from "../../../engine/index.ts";
import { answerModels, inModel } from "../answerModels.ts";
import type { TrialChoices } from "./TrialChoices.ts";
import type { TrialKind, TrialStage } from "./TrialRun.ts";
import { trialRequest } from "./trialRequests.ts";

/** A trial in the models that suit the plan, the quick one first. */
export function trialStages(kind: TrialKind, plan: SavedPlan, choices: TrialChoices): TrialStage[] {
  return answerModels(plan)
    .best.toReversed()
    .map((model) => ({
      model,
      request: trialRequest(kind, plan, inModel(plan, model), choices),
    }));
}

/**
 * Two plans of one key give one and the same trial: where a trial walks something about, it does not matter where that
 * stands in the plan. A walk holds while the reflector is dragged along it, a map while it is moved about on it.
 */
export function trialKey(kind: TrialKind, plan: SavedPlan, choices: TrialChoices, anchor: SavedPlan): string {
  return JSON.stringify(trialStages(kind, anchored(kind, plan, anchor), choices));
}

/** What the trial varies, put where the anchor has it. */
function anchored(kind: TrialKind, plan: SavedPlan, anchor: SavedPlan): SavedPlan {
  const reflector = reflectorOf(plan);
  const other = reflectorOf(anchor);
  const driven = drivenOf(anchor);
  if ((kind !== "pace" && kind !== "map") || !reflector || !other || !driven) return { ...plan, title: "" };
  const spaced = withSpacing(plan, driven.forward_m - other.forward_m);
  return { ...(kind === "map" ? withElementHeight(spaced, reflector.id, other.height_m) : spaced), title: "" };
}
