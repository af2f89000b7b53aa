import type { Plan } from "../contract.ts";

/** Where the array stands and which way it looks. */
export interface PlanSite {
  /** True bearing of the beam (+x), clockwise from north, 0..360. */
  readonly heading_deg: number;
  readonly ituRegion: 1 | 2 | 3;
}

/** The stretch of spectrum the user wants covered. The edges are the user's to change: the licence governs. */
export interface PlanBand {
  readonly label: string;
  readonly from_MHz: number;
  readonly to_MHz: number;
}

/** What the user looks at: the directions that every comparison is made in. */
export interface PlanInterest {
  /** The elevation that carries the user's path. */
  readonly elevation_deg: number;
  /** Full width of the sector, centred straight back, that should be quiet. */
  readonly rearSector_deg: number;
  /** Elevation at which the azimuth cut is drawn. */
  readonly azimuthCutElevation_deg: number;
}

/** A design put aside to compare with. */
export interface PinnedPlan {
  readonly id: string;
  readonly name: string;
  readonly plan: Plan;
}

/**
 * What a plan file or a link holds: the solver's plan and what the user said around it. Every part is optional, and
 * fields this page does not know are carried along untouched.
 */
export interface SavedPlan extends Plan {
  readonly site?: PlanSite;
  readonly band?: PlanBand;
  readonly interest?: PlanInterest;
  /** At most `limits.pins`. */
  readonly pins?: readonly PinnedPlan[];
  /** Id of the pin that every readout is compared to. */
  readonly baseline?: string;
  readonly remark?: string;
}
