import type { Plan, Problem, SavedPlan, SoilModel } from "../../engine/index.ts";
import { corePlan, modelObstacles } from "../../engine/index.ts";

/** The two ways in which soil is reckoned with: at once and roughly, or in full and a moment later. */
export type AnswerModel = "preview" | "full-wave";

/** The plan as one of the models is asked about it. Where there is no soil, both are asked the same. */
export function inModel(plan: Plan, model: AnswerModel): Plan {
  const soilModel: SoilModel = model === "preview" ? "screen" : "full-wave";
  return plan.ground.kind === "soil" ? { ...corePlan(plan), soilModel } : corePlan(plan);
}

export interface AnswerModels {
  /** The models that suit the plan, best first. Empty only where its radials suit neither. */
  readonly best: readonly AnswerModel[];
  /** What keeps a plan that asks for the full answer from getting it. */
  readonly obstacles: readonly Problem[];
}

/**
 * By which models a plan is answered, and with it all that it is compared to: a difference is always between answers
 * of one model, whatever the pinned plans ask for themselves.
 */
export function answerModels(plan: SavedPlan): AnswerModels {
  const known = found.get(plan);
  if (known) return known;
  const models = findModels(plan);
  found.set(plan, models);
  return models;
}

/** Plans never change, and several parts of the page ask about each in every frame of a drag. */
const found = new WeakMap<SavedPlan, AnswerModels>();

function findModels(plan: SavedPlan): AnswerModels {
  if (!isOverSoil(plan) || plan.soilModel === "screen") return { best: ["preview"], obstacles: [] };
  const obstacles = modelObstacles(inModel(plan, "full-wave"));
  const best: AnswerModel[] = obstacles.length === 0 ? ["full-wave"] : [];
  if (modelObstacles(inModel(plan, "preview")).length === 0) best.push("preview");
  return { best, obstacles };
}

/** Whether soil has a say in anything that is shown: in the plan or in what it is compared to. */
export function isOverSoil(plan: SavedPlan): boolean {
  return [plan, ...(plan.pins ?? []).map((pin) => pin.plan)].some((one) => one.ground.kind === "soil");
}
