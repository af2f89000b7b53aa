import type { WireInput } from "../contract.ts";

/** Segments per wavelength where the engine chooses. */
export const SEGMENTS_PER_WAVELENGTH = 240;
/** … and the coarsest it goes to keep a large problem within UNKNOWNS_SOUGHT. */
const COARSEST_PER_WAVELENGTH = 40;
const UNKNOWNS_SOUGHT = 1200;
/** The reduced kernel holds down to an average segment of four radii. */
export const SHORTEST_SEGMENT_RADII = 4;

/**
 * How many segments each wire is to have, before ports cut it into runs.
 *
 * A wire whose count is given keeps it. Otherwise it gets SEGMENTS_PER_WAVELENGTH, at least twelve, fewer where
 * segments would be shorter than four radii, and in large problems down to a sixth of that density.
 */
export function segmentCounts(wires: readonly WireInput[], wavelength_m: number): number[] {
  const lengthOf = wires.map((w) =>
    Math.hypot(w.to_m[0] - w.from_m[0], w.to_m[1] - w.from_m[1], w.to_m[2] - w.from_m[2]),
  );
  const total = lengthOf.reduce((a, b) => a + b, 0) / wavelength_m;
  const density = Math.min(SEGMENTS_PER_WAVELENGTH, Math.max(COARSEST_PER_WAVELENGTH, UNKNOWNS_SOUGHT / total));
  return wires.map((wire, w) => {
    if (wire.segments !== undefined) return wire.segments;
    const thickest = Math.floor(lengthOf[w]! / (SHORTEST_SEGMENT_RADII * wire.radius_m));
    return Math.max(2, Math.min(thickest, Math.max(12, Math.ceil((lengthOf[w]! / wavelength_m) * density))));
  });
}
