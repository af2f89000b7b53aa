import type { Plan } from "../contract.ts";
import type { PlanBench } from "./PlanBench.ts";

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

/** A cable: one of the table (`lineTypes`) by its id, or described by hand. */
export type PlanCable =
  | { readonly kind: "listed"; readonly id: string }
  | {
      readonly kind: "own";
      readonly impedance_ohm: number;
      readonly velocityFactor: number;
      /** Matched loss at two frequencies. */
      readonly loss: readonly [PlanLossPoint, PlanLossPoint];
    };

export interface PlanLossPoint {
  readonly frequency_MHz: number;
  readonly loss_dBPer100m: number;
}

/** What leads from the rig to the antenna, and what the user has chosen about it. */
export interface PlanFeedline {
  readonly cable: PlanCable;
  readonly length_m: number;
  /** Another cable of the table, at hand for sections and stubs. */
  readonly sectionId: string;
  /** Carrier at full power, at the rig. */
  readonly power_W: number;
  /** Highest SWR the user takes. */
  readonly swrLimit: number;
  readonly coilQ: number;
  readonly capacitorQ: number;
  /** The match that stands at the feedpoint, by the name `matchKey` gives it. Absent: none. */
  readonly match?: string;
  readonly pair?: PlanPair;
  readonly reversal?: PlanReversal;
}

/** Both elements fed: the current of the one behind over that of the one ahead. */
export interface PlanPair {
  readonly magnitude: number;
  readonly phase_deg: number;
  /** Else both are as the driven is. */
  readonly asDrawn: boolean;
}

/** What the load of the element behind is chosen for, and what it is made of. */
export interface PlanReversal {
  readonly goal: "front-to-back" | "as-now";
  readonly load: "part" | "stub";
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
  readonly feedline?: PlanFeedline;
  readonly bench?: PlanBench;
}
