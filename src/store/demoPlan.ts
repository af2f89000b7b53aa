import { startingPlan } from "./startingPlan.ts";

/** What a first visit opens. */
export const demoPlan = startingPlan;
