import type { PlanFeedline, SavedPlan } from "../SavedPlan.ts";
import { feedlineOf } from "./feedlineOf.ts";

export type FeedlineChange = { readonly [K in keyof PlanFeedline]?: PlanFeedline[K] | undefined };

/** Changes some of what is said of the feed line; the rest is what the plan says, or what is assumed. Undefined takes a choice back. */
export function withFeedline(plan: SavedPlan, change: FeedlineChange): SavedPlan {
  const merged = { ...feedlineOf(plan), ...change };
  const stated = Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined));
  return { ...plan, feedline: stated as unknown as PlanFeedline };
}
