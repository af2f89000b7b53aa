import type { Plan } from "../../contract.ts";
import { withElement } from "./withElement.ts";

/** One element moved, its radials with it. @throws RangeError when no element has that id */
export function withElementPosition<P extends Plan>(plan: P, elementId: string, forward_m: number, left_m: number): P {
  return withElement(plan, elementId, (element) => ({ ...element, forward_m, left_m }));
}
