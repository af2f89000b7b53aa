import type { Plan } from "../../../engine/index.ts";
import type { AnswerModel } from "../../store/answerModels.ts";

/** By which model a result was worked out. */
export function modelWords(plan: Plan, model: AnswerModel | null): string {
  if (plan.ground.kind === "perfect") return "Solved over perfect ground";
  if (plan.ground.kind === "free-space") return "Solved without any ground";
  return model === "full-wave" ? "Full-wave over this soil" : "Quick preview of this soil";
}
