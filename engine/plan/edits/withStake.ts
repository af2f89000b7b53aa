import type { ElementPlan, Plan } from "../../contract.ts";

/** Drives a ground stake under every element's base, or pulls them all out (null). */
export function withStake<P extends Plan>(plan: P, stake: ElementPlan["stake"] | null): P {
  return {
    ...plan,
    elements: plan.elements.map((element) => {
      const { stake: _, ...bare } = element;
      return stake ? { ...bare, stake } : bare;
    }),
  };
}
