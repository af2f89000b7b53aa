import type { Plan } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import { limits } from "../limits.ts";
import type { SavedPlan } from "../SavedPlan.ts";
import { corePlan } from "./corePlan.ts";

/**
 * Puts a design aside under a name, by default the plan itself as it now stands. Only what the solver needs is pinned:
 * pins hold no pins. Ids are "pin-1", "pin-2", …, the lowest that is free.
 */
export function withPin(plan: SavedPlan, name: string, pinned: Plan = plan): Result<SavedPlan> {
  const pins = plan.pins ?? [];
  if (pins.length >= limits.pins)
    return failed({
      code: "too-many-pins",
      where: "pins",
      message: `${pins.length} designs are pinned already, and ${limits.pins} is the most; take one off first.`,
    });
  let number = 1;
  while (pins.some((pin) => pin.id === `pin-${number}`)) number++;
  return ok({ ...plan, pins: [...pins, { id: `pin-${number}`, name, plan: corePlan(pinned) }] });
}
