import { limits } from "../../../engine/index.ts";

/** What a reading, a log and a lead may hold. */
export const bounds = {
  frequency_MHz: limits.frequency_MHz,
  resistance_ohm: { least: 0, most: 100_000 },
  reactance_ohm: { least: -100_000, most: 100_000 },
  swr: { least: 1, most: 1000 },
  text_characters: 500,
} as const;
