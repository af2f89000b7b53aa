import type { Plan, TrialAsk } from "../../../engine/index.ts";

/** Names the soil's tables that an ask takes, dear to build and kept by the worker that built them; "" where it takes none. */
export function tablesKey({ plan, frequency_MHz }: Pick<TrialAsk, "plan" | "frequency_MHz">): string {
  return takesTables(plan) ? `${frequency_MHz} ${JSON.stringify(plan.ground)}` : "";
}

export function takesTables(plan: Plan): boolean {
  return plan.ground.kind === "soil" && plan.soilModel === "full-wave";
}
