import type { SavedPlan } from "../SavedPlan.ts";

/** Takes a pin off, and with it the baseline if that was the one. A pin that is not there leaves the plan as it is. */
export function withoutPin(plan: SavedPlan, pinId: string): SavedPlan {
  if (!plan.pins?.some((pin) => pin.id === pinId)) return plan;
  const { pins, baseline, ...rest } = plan;
  return {
    ...rest,
    pins: pins.filter((pin) => pin.id !== pinId),
    ...(baseline === undefined || baseline === pinId ? {} : { baseline }),
  };
}
