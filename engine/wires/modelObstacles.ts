import type { ElementPlan, Plan } from "../contract.ts";
import { limits } from "../plan/limits.ts";
import type { Problem } from "../result.ts";
import { footing } from "./footing.ts";

/**
 * What keeps a plan's own soil model from taking its radials as they lie: the preview knows none that are raised, and a
 * base on wires needs wires. Quick: nothing is laid or solved.
 */
export function modelObstacles(plan: Plan): Problem[] {
  return plan.elements.flatMap((element, i) => obstacle(plan, element, i) ?? []);
}

function obstacle(plan: Plan, element: ElementPlan, index: number): Problem | undefined {
  const { height_m, count } = element.radials;
  const where = `elements[${index}].radials`;
  if (plan.ground.kind === "soil" && plan.soilModel === "screen" && height_m > limits.previewHeight_m)
    return {
      code: "raised-needs-full-wave",
      where: `${where}.height_m`,
      message: `Radials raised to ${height_m} m over soil need the full-wave soil model; the preview takes up to ${limits.previewHeight_m} m.`,
    };
  if (count === 0 && footing(plan, element) === "wires")
    return {
      code: "base-without-radials",
      where: `${where}.count`,
      message: "0 radials: with nothing to stand on, the base needs at least 1 radial to be fed against.",
    };
  return undefined;
}
