import { limits } from "../../../engine/index.ts";

const { bench } = limits;

/** What may be typed into the bench. */
export const bounds = {
  frequency_MHz: limits.frequency_MHz,
  resistance_ohm: { least: 0, most: bench.reading_ohm },
  reactance_ohm: { least: -bench.reading_ohm, most: bench.reading_ohm },
  swr: bench.swr,
  level_dB: bench.level_dB,
  length_m: { least: 0.1, most: limits.length_m },
  allowance_percent: bench.allowance_percent,
  declination_deg: bench.declination_deg,
  latitude_deg: bench.latitude_deg,
  longitude_deg: bench.longitude_deg,
  readings: bench.readings,
  /** Of a sweep from a file, so that a season of them does not make the plan heavy. */
  pointsKept: 201,
  logEntries: bench.logEntries,
  pairs: bench.pairs,
  /** Words in one line. */
  text_characters: 500,
} as const;
