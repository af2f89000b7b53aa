import type { Plan, RadialField } from "../contract.ts";

/** Height of the axis of a radial that lies on bare soil [m]: its own radius and the roughness of the ground. */
export const LYING_HEIGHT_M = 5e-3;
/** Where radials of two elements cross, the later element's lie this much higher; in soil deeper [m]. */
export const CROSSING_STEP_M = 5e-3;
const CROSSING_STEP_IN_SOIL_M = 2e-2;

/**
 * Heights at which each element's radials run as wires, below 0 in soil, and which elements were moved because their
 * radials cross an earlier element's at the same height. Crossing wires are insulated from each other; none cross where
 * radials end at the line midway.
 */
export function radialHeights({ elements, fields }: Plan): { height_m: number[]; lifted: number[] } {
  const overlap = fields === undefined || fields.radials === "overlap";
  const height_m: number[] = [];
  const lifted: number[] = [];
  elements.forEach((element, i) => {
    let height = element.radials.height_m === 0 ? LYING_HEIGHT_M : element.radials.height_m;
    const step = height < 0 ? -CROSSING_STEP_IN_SOIL_M : CROSSING_STEP_M;
    const crosses = (j: number) => {
      const other = elements[j]!;
      const apart = Math.hypot(element.forward_m - other.forward_m, element.left_m - other.left_m);
      const clearance = Math.abs(step) * 0.99;
      return apart < longest(element.radials) + longest(other.radials) && Math.abs(height - height_m[j]!) < clearance;
    };
    let steps = 0;
    while (overlap && steps < elements.length && height_m.some((_, j) => crosses(j))) {
      height += step;
      steps++;
    }
    if (steps > 0) lifted.push(i);
    height_m.push(height);
  });
  return { height_m, lifted };
}

function longest({ each, length_m }: RadialField): number {
  return each ? each.reduce((most, one) => Math.max(most, one.length_m), 0) : length_m;
}
