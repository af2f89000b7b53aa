import type { PathBand } from "../../charts/PathBand.ts";

/** How far to either side of the path's elevation the cuts are shaded: wide enough to see, too narrow to mislead. */
const half_deg = 1.5;

/** The band shaded about the elevation that carries the path, within the quarter from horizon to zenith. */
export function pathBand(elevation_deg: number): PathBand {
  return {
    elevation_deg,
    from_deg: Math.max(0, elevation_deg - half_deg),
    to_deg: Math.min(90, elevation_deg + half_deg),
  };
}
