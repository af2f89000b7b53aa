import { C0_mPerS } from "../constants.ts";
import { SHORTEST_SEGMENT_RADII } from "./segmentCounts.ts";

/**
 * Segments for the uprights of a plan over soil, per wavelength. In the preview two thirds of what wires get elsewhere:
 * the impedance moves by 0.1 ohm, far inside what the preview is off by, and a drag costs half. In the full-wave model
 * half of that again, since there the radials are the larger part: 0.1 ohm in R and 0.3 in X.
 */
const UPRIGHT_PER_WAVELENGTH = { screen: 160, "full-wave": 80 } as const;
/**
 * Radials as wires: ten segments a quarter wave when they are many. A few stand nearer to their own resonance and carry
 * more each, so they get up to three times as many.
 */
const RADIAL_PER_WAVELENGTH = 40;
const MANY_RADIALS = 16;
const FEWEST = { upright: 12, radial: 6 } as const;

function count(length_m: number, radius_m: number, frequency_MHz: number, density: number, fewest: number): number {
  const wavelength_m = C0_mPerS / (frequency_MHz * 1e6);
  const most = Math.floor(length_m / (SHORTEST_SEGMENT_RADII * radius_m));
  return Math.max(
    Math.min(2, fewest),
    Math.min(most, Math.max(fewest, Math.ceil((density * length_m) / wavelength_m))),
  );
}

/** How many segments an upright of a plan over soil is cut into. */
export function uprightSegments(
  length_m: number,
  radius_m: number,
  frequency_MHz: number,
  model: keyof typeof UPRIGHT_PER_WAVELENGTH,
): number {
  return count(length_m, radius_m, frequency_MHz, UPRIGHT_PER_WAVELENGTH[model], FEWEST.upright);
}

/** How many segments one of `radials` radials is cut into. */
export function radialSegments(length_m: number, radius_m: number, frequency_MHz: number, radials: number): number {
  const denser = Math.max(1, Math.min(3, MANY_RADIALS / Math.max(1, radials)));
  return count(length_m, radius_m, frequency_MHz, RADIAL_PER_WAVELENGTH * denser, FEWEST.radial);
}

/** How many segments a wire that joins radial fields is cut into: short pieces of a bus need few. */
export function joiningSegments(length_m: number, radius_m: number, frequency_MHz: number): number {
  return count(length_m, radius_m, frequency_MHz, 1.5 * RADIAL_PER_WAVELENGTH, 1);
}
