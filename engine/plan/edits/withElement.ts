import type { ElementPlan, Plan } from "../../contract.ts";

/**
 * The plan with one element changed.
 * @throws RangeError when no element has that id (a caller's mistake)
 */
export function withElement<P extends Plan>(
  plan: P,
  elementId: string,
  change: (element: ElementPlan) => ElementPlan,
): P {
  if (!plan.elements.some((element) => element.id === elementId))
    throw new RangeError(`withElement: no element has the id ${JSON.stringify(elementId)}`);
  return {
    ...plan,
    elements: plan.elements.map((element) => (element.id === elementId ? change(element) : element)),
  };
}
