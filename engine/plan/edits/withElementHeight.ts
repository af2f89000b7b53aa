import type { Plan } from "../../contract.ts";
import { withElement } from "./withElement.ts";

/** One upright cut to another length. @throws RangeError when no element has that id */
export function withElementHeight<P extends Plan>(plan: P, elementId: string, height_m: number): P {
  return withElement(plan, elementId, (element) => ({ ...element, height_m }));
}
