import type { Directions } from "./arraySample.ts";
import { directionCount, fieldPlace } from "./fieldPlace.ts";

/**
 * Where in a sample's fields those of fewer directions stand, in a sample's order: picked out (`ArrayChart.pick`) they make
 * the fields of a sample in these directions alone.
 *
 * @throws RangeError when one is not among those the sample was taken in
 */
export function fieldPlaces(all: Directions, some: Directions, ports: number): readonly number[] {
  const count = directionCount(all);
  const out: number[] = [];
  for (let p = 0; p < ports; p++) {
    const pick = (elevation_deg: number, azimuth_deg: number) => {
      const at = fieldPlace(all, elevation_deg, azimuth_deg);
      if (at < 0) throw new RangeError(`fieldPlaces: no field at elevation ${elevation_deg}, azimuth ${azimuth_deg}`);
      const first = 4 * (p * count + at);
      out.push(first, first + 1, first + 2, first + 3);
    };
    for (const elevation_deg of some.elevations_deg)
      for (const azimuth_deg of some.azimuths_deg) pick(elevation_deg, azimuth_deg);
    for (const elevation_deg of some.ahead_deg ?? []) pick(elevation_deg, 0);
  }
  return out;
}
