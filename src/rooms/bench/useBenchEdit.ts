import { useCallback } from "react";
import type { PlanBench, SavedPlan } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";

/** Undefined takes a part out of the bench. */
export type BenchChange = { readonly [K in keyof PlanBench]?: PlanBench[K] | undefined };
export type BenchEdit = (change: (bench: PlanBench) => BenchChange, label: string, mergeKey?: string) => void;

const nothing: PlanBench = {};

/** What the plan holds of building and measuring; nothing at all before the first of it is written. */
export const benchOf = (plan: SavedPlan): PlanBench => plan.bench ?? nothing;

/** The plan with some of its bench changed; a bench with nothing in it is no part of a plan. */
export function withBench(plan: SavedPlan, change: BenchChange): SavedPlan {
  const merged = { ...benchOf(plan), ...change };
  const stated = Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined));
  const { bench: _, ...rest } = plan;
  return Object.keys(stated).length === 0 ? rest : { ...rest, bench: stated as PlanBench };
}

/** Changes what the plan holds of building and measuring, as one undo step. */
export function useBenchEdit(): BenchEdit {
  const edit = usePlan((s) => s.edit);
  return useCallback(
    (change, label, mergeKey) => edit((plan) => withBench(plan, change(benchOf(plan))), label, mergeKey),
    [edit],
  );
}
