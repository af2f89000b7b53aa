import { C0_mPerS } from "../../constants.ts";
import type { Line } from "./Line.ts";

/** Wavelength along a line [m]. */
export function lineWavelength_m(line: Line, frequency_MHz: number): number {
  return (line.velocityFactor * C0_mPerS) / (frequency_MHz * 1e6);
}
