import type { Plan, RadialField } from "../../contract.ts";
import { withElement } from "./withElement.ts";

/** What to change of a radial field; the rest stays. `insulation: null` strips it to bare wire. */
export interface RadialChange {
  readonly count?: number;
  readonly length_m?: number;
  readonly diameter_mm?: number;
  readonly height_m?: number;
  readonly insulation?: RadialField["insulation"] | null;
}

/**
 * Changes the radials of one element, or of all when no id is given.
 * @throws RangeError when no element has that id
 */
export function withRadials<P extends Plan>(plan: P, change: RadialChange, elementId?: string): P {
  if (elementId !== undefined)
    return withElement(plan, elementId, (element) => ({ ...element, radials: changed(element.radials, change) }));
  return {
    ...plan,
    elements: plan.elements.map((element) => ({ ...element, radials: changed(element.radials, change) })),
  };
}

function changed(radials: RadialField, { insulation, ...numbers }: RadialChange): RadialField {
  const next = { ...radials, ...numbers };
  if (insulation === undefined) return next;
  const { insulation: _, ...bare } = next;
  return insulation === null ? bare : { ...bare, insulation };
}
