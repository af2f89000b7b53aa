import type { SavedPlan } from "../SavedPlan.ts";

/**
 * Names the pin that every readout is compared to; null: none.
 * @throws RangeError when no pin has that id
 */
export function withBaseline(plan: SavedPlan, pinId: string | null): SavedPlan {
  const { baseline: _, ...rest } = plan;
  if (pinId === null) return rest;
  if (!plan.pins?.some((pin) => pin.id === pinId))
    throw new RangeError(`withBaseline: no pin has the id ${JSON.stringify(pinId)}`);
  return { ...rest, baseline: pinId };
}
