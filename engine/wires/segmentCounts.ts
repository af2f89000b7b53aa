import type { WireInput } from "../contract.ts";
import type { HalfSpace } from "../kernel/halfSpace/HalfSpace.ts";

/** Segments per wavelength where the engine chooses. */
export const SEGMENTS_PER_WAVELENGTH = 240;
/** … and the coarsest it goes to keep a large problem within UNKNOWNS_SOUGHT. */
const COARSEST_PER_WAVELENGTH = 40;
const UNKNOWNS_SOUGHT = 1200;
/** The reduced kernel holds down to an average segment of four radii. */
export const SHORTEST_SEGMENT_RADII = 4;

/** Least number of segments per wavelength in soil, for what is buried in it … */
export const PER_SOIL_WAVELENGTH = 24;
/** … and of a piece of wire in soil, however short. */
export const FEWEST_IN_SOIL = 3;

/**
 * How many segments each wire is to have, before ports cut it into runs.
 *
 * A wire whose count is given keeps it. Otherwise it gets SEGMENTS_PER_WAVELENGTH, at least twelve, fewer where
 * segments would be shorter than four radii, and in large problems down to a sixth of that density. In soil, where waves
 * are shorter, no fewer than PER_SOIL_WAVELENGTH.
 *
 * @param soil where wires may lie in it
 */
export function segmentCounts(wires: readonly WireInput[], wavelength_m: number, soil?: HalfSpace): number[] {
  const perSoilMetre = soil ? (PER_SOIL_WAVELENGTH * Math.hypot(soil.k1Re, soil.k1Im)) / (2 * Math.PI) : 0;
  const lengthOf = wires.map((w) =>
    Math.hypot(w.to_m[0] - w.from_m[0], w.to_m[1] - w.from_m[1], w.to_m[2] - w.from_m[2]),
  );
  const total = lengthOf.reduce((a, b) => a + b, 0) / wavelength_m;
  const density = Math.min(SEGMENTS_PER_WAVELENGTH, Math.max(COARSEST_PER_WAVELENGTH, UNKNOWNS_SOUGHT / total));
  return wires.map((wire, w) => {
    if (wire.segments !== undefined) return wire.segments;
    const thickest = Math.floor(lengthOf[w]! / (SHORTEST_SEGMENT_RADII * wire.radius_m));
    const deep = Math.min(wire.from_m[2], wire.to_m[2]) < 0 && Math.max(wire.from_m[2], wire.to_m[2]) <= 0;
    const inSoil = deep ? lengthOf[w]! * perSoilMetre : 0;
    const sought = Math.ceil(Math.max((lengthOf[w]! / wavelength_m) * density, inSoil));
    return Math.max(2, Math.min(thickest, Math.max(12, sought)));
  });
}
