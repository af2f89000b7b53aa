import type { Directions } from "./arraySample.ts";

/** How many directions there are. */
export function directionCount({ elevations_deg, azimuths_deg, ahead_deg = [] }: Directions): number {
  return elevations_deg.length * azimuths_deg.length + ahead_deg.length;
}

/** The how-manieth of the directions one is, in a sample's order, from 0; −1 where it is not among them. */
export function fieldPlace(
  { elevations_deg, azimuths_deg, ahead_deg = [] }: Directions,
  elevation_deg: number,
  azimuth_deg: number,
): number {
  const e = elevations_deg.indexOf(elevation_deg);
  const a = azimuths_deg.indexOf(azimuth_deg);
  if (e >= 0 && a >= 0) return e * azimuths_deg.length + a;
  const beyond = azimuth_deg === 0 ? ahead_deg.indexOf(elevation_deg) : -1;
  return beyond < 0 ? -1 : elevations_deg.length * azimuths_deg.length + beyond;
}
