import type { Directions } from "./arraySample.ts";

/**
 * Where in a sample's fields those of fewer directions stand, in a sample's order: picked out (`ArrayChart.pick`) they make
 * the fields of a sample in these directions alone.
 *
 * @throws RangeError when one is not among those the sample was taken in
 */
export function fieldPlaces(all: Directions, some: Directions, ports: number): readonly number[] {
  const { elevations_deg, azimuths_deg } = all;
  const out: number[] = [];
  for (let p = 0; p < ports; p++)
    for (const elevation_deg of some.elevations_deg)
      for (const azimuth_deg of some.azimuths_deg) {
        const e = elevations_deg.indexOf(elevation_deg);
        const a = azimuths_deg.indexOf(azimuth_deg);
        if (e < 0 || a < 0)
          throw new RangeError(`fieldPlaces: no field at elevation ${elevation_deg}, azimuth ${azimuth_deg}`);
        const first = 4 * ((p * elevations_deg.length + e) * azimuths_deg.length + a);
        out.push(first, first + 1, first + 2, first + 3);
      }
  return out;
}
