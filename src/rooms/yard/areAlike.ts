import type { ElementPlan } from "../../../engine/index.ts";

/** Whether all elements have one conductor thickness and one kind of radial field. */
export function areAlike(elements: readonly ElementPlan[]): boolean {
  const first = elements[0];
  return elements.every(
    (element) =>
      element.diameter_mm === first!.diameter_mm &&
      element.radials.count === first!.radials.count &&
      element.radials.length_m === first!.radials.length_m &&
      element.radials.diameter_mm === first!.radials.diameter_mm &&
      element.radials.height_m === first!.radials.height_m &&
      element.radials.insulation?.diameter_mm === first!.radials.insulation?.diameter_mm &&
      element.radials.insulation?.relativePermittivity === first!.radials.insulation?.relativePermittivity,
  );
}
