import type { Plan } from "../../../engine/index.ts";
import { namesIn } from "./namesIn.ts";

/** The elements besides the first fed one, whose currents are told against its. */
export function othersOf(plan: Plan): { readonly id: string; readonly name: string }[] {
  const reference = plan.elements.find((e) => e.base.kind === "fed")?.id;
  const nameOf = namesIn(plan);
  return plan.elements.filter((e) => e.id !== reference).map(({ id }) => ({ id, name: nameOf(id) }));
}
