/** The elevations that carry the path: the one it is judged at, and the band shaded about it. */
export interface PathBand {
  readonly elevation_deg: number;
  readonly from_deg: number;
  readonly to_deg: number;
}
