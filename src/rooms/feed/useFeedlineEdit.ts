import { useCallback } from "react";
import { type PlanFeedline, withFeedline } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";

export type FeedlineEdit = (
  change: { readonly [K in keyof PlanFeedline]?: PlanFeedline[K] | undefined },
  label: string,
  mergeKey?: string,
) => void;

/** Changes what the plan says of its feed line, as one undo step. */
export function useFeedlineEdit(): FeedlineEdit {
  const edit = usePlan((s) => s.edit);
  return useCallback((change, label, mergeKey) => edit((plan) => withFeedline(plan, change), label, mergeKey), [edit]);
}
