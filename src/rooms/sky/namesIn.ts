import type { Plan } from "../../../engine/index.ts";
import { elementName } from "../yard/elementName.ts";

/** What the page calls the elements of a plan, by id; an id that is not in it is its own name. */
export function namesIn(plan: Plan | null): (elementId: string) => string {
  const names = new Map((plan?.elements ?? []).map((e) => [e.id, elementName(plan!, e)]));
  return (id) => names.get(id) ?? id;
}
