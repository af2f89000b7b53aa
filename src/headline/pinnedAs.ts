import { corePlan, type PinnedPlan, type Plan, type SavedPlan } from "../../engine/index.ts";

/** The pin that already holds this very design, whatever it is called. */
export function pinnedAs(plan: SavedPlan, design: Plan): PinnedPlan | undefined {
  const key = (one: Plan) => JSON.stringify({ ...corePlan(one), title: "" });
  return plan.pins?.find((pin) => key(pin.plan) === key(design));
}
