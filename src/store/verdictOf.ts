import { checkSavedPlan, type Result, type SavedPlan } from "../../engine/index.ts";
import { oncePer } from "../oncePer.ts";

/** Whether a plan is good, and what is wrong with it: asked before an edit is carried out, and again by the store. */
export const verdictOf: (plan: SavedPlan) => Result<SavedPlan> = oncePer(checkSavedPlan);
