import type { PlanFeedline, PlanPair, PlanReversal, SavedPlan } from "../SavedPlan.ts";

/** What is assumed of a feed line that the plan does not state: common solid cable across a garden, 100 W, SWR 2. */
export const defaultFeedline: PlanFeedline = {
  cable: { kind: "listed", id: "rg-213" },
  length_m: 20,
  sectionId: "rg-59b",
  power_W: 100,
  swrLimit: 2,
  coilQ: 200,
  capacitorQ: 1000,
};

/** Equal currents, the one behind 90 degrees ahead in phase. */
export const defaultPair: PlanPair = { magnitude: 1, phase_deg: 90, asDrawn: false };

export const defaultReversal: PlanReversal = { goal: "front-to-back", load: "part" };

export function feedlineOf(plan: SavedPlan): PlanFeedline {
  return plan.feedline ?? defaultFeedline;
}
