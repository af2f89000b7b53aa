import type { ElementPlan, Plan } from "../contract.ts";
import { limits } from "../plan/limits.ts";
import type { Problem } from "../result.ts";
import { footing } from "./footing.ts";

/**
 * What keeps a plan's own soil model from taking its radials as they lie: the preview knows none that are raised, and a
 * base on wires needs wires. Quick: nothing is laid or solved.
 */
export function modelObstacles(plan: Plan): Problem[] {
  return [...plan.elements.flatMap((element, i) => obstacle(plan, element, i) ?? []), ...unlevelBus(plan)];
}

/** A bus joins ends of radials, which then have to lie at one height. */
function unlevelBus(plan: Plan): Problem[] {
  if (plan.fields?.radials !== "bus") return [];
  const wired = plan.elements
    .map((element, index) => ({ element, index }))
    .filter(({ element }) => footing(plan, element) === "wires");
  const first = wired[0]?.element.radials.height_m;
  return wired
    .filter(({ element }) => element.radials.height_m !== first)
    .map(({ element, index }) => ({
      code: "bus-needs-one-height",
      where: `elements[${index}].radials.height_m`,
      message: `Radials at ${element.radials.height_m} m cannot end on one bus with radials at ${first} m; they must lie at one height.`,
    }));
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
  if (count === 0 && !(element.stake && plan.ground.kind === "soil") && footing(plan, element) === "wires")
    return {
      code: "base-without-radials",
      where: `${where}.count`,
      message:
        "0 radials: with nothing to stand on, the base needs at least 1 radial (or a ground stake) to be fed against.",
    };
  return undefined;
}
