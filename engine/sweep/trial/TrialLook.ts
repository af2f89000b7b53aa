/** What a trial looks at. Angles in degrees. */
export interface TrialLook {
  /** The elevation that carries the path. */
  readonly pathElevation_deg: number;
  /** Full width of the sector centred straight back in which the loudest direction is sought. */
  readonly rearSector_deg: number;
  /** Elevations at which the path's signals arrive: gain ahead is averaged over them. Absent: no such score. */
  readonly arrival_deg?: { readonly from: number; readonly to: number };
}
