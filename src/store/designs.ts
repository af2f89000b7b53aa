import { corePlan, type PinnedPlan, type Plan, type Result, type SavedPlan } from "../../engine/index.ts";
import { oncePer } from "../oncePer.ts";
import { type AnswerModel, inModel } from "./answerModels.ts";

/** A design as one model is asked about it, with the name its answer is kept by. */
export interface Design {
  readonly plan: Plan;
  readonly key: string;
}

/** The title does not change a number, and no two plans that differ in it alone need solving twice. */
export function keyOf(plan: Plan, request: object): string {
  return untitled(plan) + JSON.stringify(request);
}

const untitled = oncePer((plan: Plan) => JSON.stringify({ ...corePlan(plan), title: "" }));

/**
 * The designs that a plan's answer takes, each once, the most wanted first: itself (when it is sound), the baseline,
 * and the other pins.
 */
export function designsOf(plan: SavedPlan, isGood: boolean, model: AnswerModel, request: object): Design[] {
  const pins = [...(plan.pins ?? [])].sort((a, b) => Number(b.id === plan.baseline) - Number(a.id === plan.baseline));
  const all = [...(isGood ? [plan] : []), ...pins.map((pin) => pin.plan)].map((one) => inModel(one, model));
  const designs = new Map<string, Design>();
  for (const one of all) {
    const key = keyOf(one, request);
    if (!designs.has(key)) designs.set(key, { plan: one, key });
  }
  return [...designs.values()];
}

/**
 * What is found for each pin, by its id; pins for which nothing good is found are left out. Where that is all the same
 * as `before`, it is `before` itself, so that nothing is drawn anew.
 */
export function ofPins<T>(
  plan: SavedPlan,
  find: (pin: PinnedPlan) => Result<T> | undefined,
  before: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  const found: Record<string, T> = {};
  for (const pin of plan.pins ?? []) {
    const answer = find(pin);
    if (answer?.ok) found[pin.id] = answer.value;
  }
  const ids = Object.keys(found);
  const isSame = ids.length === Object.keys(before).length && ids.every((id) => found[id] === before[id]);
  return isSame ? before : found;
}
