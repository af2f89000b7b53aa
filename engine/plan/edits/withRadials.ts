import type { Plan, RadialField } from "../../contract.ts";
import { withElement } from "./withElement.ts";

/**
 * What to change of a radial field; the rest stays. `insulation: null` strips it to bare wire. A new count or length makes
 * radials equal that were laid one by one.
 */
export interface RadialChange {
  readonly count?: number;
  readonly length_m?: number;
  readonly diameter_mm?: number;
  readonly height_m?: number;
  readonly insulation?: RadialField["insulation"] | null;
  /** Radials one by one, which sets the count and, to their mean, the length; null makes them equal again. */
  readonly each?: RadialField["each"] | null;
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

function changed(radials: RadialField, { insulation, each, ...numbers }: RadialChange): RadialField {
  const { each: before, ...field } = radials;
  const kept = each === undefined && numbers.count === undefined && numbers.length_m === undefined ? before : each;
  const next: RadialField = {
    ...field,
    ...(kept && {
      count: kept.length,
      ...(kept.length > 0 && { length_m: kept.reduce((sum, one) => sum + one.length_m, 0) / kept.length }),
      each: kept,
    }),
    ...numbers,
  };
  if (insulation === undefined) return next;
  const { insulation: _, ...bare } = next;
  return insulation === null ? bare : { ...bare, insulation };
}
