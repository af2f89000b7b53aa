import type { ElementPlan, SavedPlan } from "../../engine/index.ts";
import { limits, reflectorOf, withoutReflector, withReflector } from "../../engine/index.ts";

/** The unfed elements taken out last on this visit, so that they come back as they were. */
let takenOut: { readonly elements: readonly ElementPlan[]; readonly frequency_MHz: number } | null = null;

/**
 * Takes the reflector out, or puts it in: the one taken out before, when it still suits this plan's frequency to
 * within a twentieth, else a fresh one by rule.
 */
export function toggleReflector(plan: SavedPlan): SavedPlan {
  if (reflectorOf(plan)) {
    const elements = plan.elements.filter((element) => element.base.kind !== "fed");
    takenOut = { elements, frequency_MHz: plan.frequency_MHz };
    return withoutReflector(plan);
  }
  return takenOut && suits(plan, takenOut)
    ? { ...plan, elements: [...plan.elements, ...takenOut.elements] }
    : withReflector(plan);
}

function suits(plan: SavedPlan, { elements, frequency_MHz }: NonNullable<typeof takenOut>): boolean {
  return (
    Math.abs(plan.frequency_MHz / frequency_MHz - 1) < 0.05 &&
    plan.elements.length + elements.length <= limits.elements.most &&
    elements.every((one) => plan.elements.every((other) => other.id !== one.id))
  );
}
