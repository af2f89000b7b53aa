import type { Line } from "./Line.ts";

/** Loss of a length of line into its own impedance: (k₁√f + k₂f) l/100 m [dB]. */
export function matchedLoss_dB(line: Line, length_m: number, frequency_MHz: number): number {
  return ((line.root_dBPer100m * Math.sqrt(frequency_MHz) + line.linear_dBPer100m * frequency_MHz) * length_m) / 100;
}
