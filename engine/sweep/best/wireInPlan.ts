import type { Plan } from "../../contract.ts";

/** Wire in all uprights and radials of a plan [m]. */
export function wireInPlan({ elements }: Plan): number {
  return elements.reduce((sum, { height_m, radials: { each, count, length_m } }) => {
    const laid = each ? each.reduce((total, one) => total + one.length_m, 0) : count * length_m;
    return sum + height_m + laid;
  }, 0);
}
