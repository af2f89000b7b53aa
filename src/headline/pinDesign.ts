import type { Plan, SavedPlan } from "../../engine/index.ts";
import { loneVertical, reflectorOf, spacingOf, withBaseline, withPin } from "../../engine/index.ts";
import type { Units } from "../store/useSettings.ts";
import { formatQuantity } from "../ui/quantity/formatQuantity.ts";
import { pinnedAs } from "./pinnedAs.ts";

/**
 * Pins a design, by default the one on screen, under a name that tells it apart; the first pin is the baseline. The
 * same design is not pinned twice: the plan then comes back as it was.
 */
export function pinDesign(plan: SavedPlan, units: Units, design: Plan = plan): SavedPlan {
  if (pinnedAs(plan, design)) return plan;
  const pinned = withPin(plan, freeName(plan, nameOf(design, units)), design);
  if (!pinned.ok) return plan;
  const added = pinned.value.pins?.at(-1);
  return added && plan.baseline === undefined ? withBaseline(pinned.value, added.id) : pinned.value;
}

function nameOf(design: Plan, units: Units): string {
  const spacing_m = spacingOf(design);
  if (spacing_m !== undefined) return `${formatQuantity(Math.abs(spacing_m), "length_m", units)} apart`;
  return design.elements.length === 1 && loneVertical(design).elements.length === 1
    ? "one vertical"
    : reflectorOf(design)
      ? "reflector alone"
      : `${design.elements.length} fed verticals`;
}

function freeName(plan: SavedPlan, name: string): string {
  const taken = new Set(plan.pins?.map((pin) => pin.name));
  let free = name;
  for (let number = 2; taken.has(free); number++) free = `${name} (${number})`;
  return free;
}
