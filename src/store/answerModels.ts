import type { Plan, Problem, SavedPlan, SoilModel } from "../../engine/index.ts";
import { corePlan, modelObstacles } from "../../engine/index.ts";
import { oncePer } from "../oncePer.ts";

/** The two ways in which soil is reckoned with: at once and roughly, or in full and a moment later. */
export type AnswerModel = "preview" | "full-wave";

/** The plan as one of the models is asked about it. Where there is no soil, both are asked the same. */
export function inModel(plan: Plan, model: AnswerModel): Plan {
  return asked[model](plan);
}

// Plans never change, and several parts of the page ask about each in every frame of a drag: so too below.
const asked = { preview: oncePer(askedWith("screen")), "full-wave": oncePer(askedWith("full-wave")) };

function askedWith(soilModel: SoilModel): (plan: Plan) => Plan {
  return (plan) => (plan.ground.kind === "soil" ? { ...corePlan(plan), soilModel } : corePlan(plan));
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
export const answerModels: (plan: SavedPlan) => AnswerModels = oncePer(findModels);

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
