import type { TrialAsk } from "./Trial.ts";

/** One text for one solve: asks that differ only in what the solver does not see (the plan's title) share it. */
export function askKey({ plan, frequency_MHz, directions, uprightSegments }: TrialAsk): string {
  const { frequency_MHz: cut_MHz, ground, soilModel, elements, fields } = plan;
  return JSON.stringify([frequency_MHz, cut_MHz, ground, soilModel, elements, fields, directions, uprightSegments]);
}
