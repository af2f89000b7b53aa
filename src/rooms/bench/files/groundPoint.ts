import type { SiteLocation } from "../../../../engine/index.ts";

/** WGS 84: semi-major axis [m] and first eccentricity squared. */
const A_m = 6_378_137;
const E2 = 0.00669437999014;

/**
 * A point some metres east and north of a place: in the plane that touches the ellipsoid there,
 * Δφ = n/M, Δλ = e/(N cos φ), with M = a(1 − e²)/(1 − e² sin² φ)^{3/2} and N = a/√(1 − e² sin² φ). What is left
 * out grows with the square of the distance, d² tan φ/R: 2 mm at 100 m in the middle latitudes, 9 mm at 80°.
 */
export function groundPoint(
  { latitude_deg, longitude_deg }: SiteLocation,
  east_m: number,
  north_m: number,
): SiteLocation {
  const phi = (latitude_deg * Math.PI) / 180;
  const w = 1 - E2 * Math.sin(phi) ** 2;
  const meridian_m = (A_m * (1 - E2)) / w ** 1.5;
  const normal_m = A_m / Math.sqrt(w);
  const degrees = 180 / Math.PI;
  return {
    latitude_deg: latitude_deg + (north_m / meridian_m) * degrees,
    longitude_deg: longitude_deg + (east_m / (normal_m * Math.cos(phi))) * degrees,
  };
}
