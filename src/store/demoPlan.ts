import backLawn from "../../demo-data/back-lawn-30m.json?raw";
import { readPlanFile, type SavedPlan } from "../../engine/index.ts";

/** What a first visit opens: invented, and said to be so in its title. */
export const demoPlan: SavedPlan = read(backLawn);

function read(text: string): SavedPlan {
  const plan = readPlanFile(text);
  if (!plan.ok) throw new RangeError(`demoPlan: ${plan.problems[0]?.message}`);
  return plan.value;
}
