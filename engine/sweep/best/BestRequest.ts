import type { Plan } from "../../contract.ts";
import type { TrialLook } from "../trial/TrialLook.ts";

/** From `least` to `most`, both allowed; the same twice: held at that. */
export interface Between {
  readonly least: number;
  readonly most: number;
}

/** What may be changed to find a better pair, in the units it is changed in. */
export interface BestBounds {
  readonly driven_m: Between;
  readonly reflector_m: Between;
  readonly spacing_m: Between;
  /** Reactance of a coil in the reflector's base at the plan's frequency; 0 to 0: none, the base joined. */
  readonly coil_ohm: Between;
  /** Most wire of all uprights and radials together. Absent: as much as it takes. */
  readonly wire_m?: number;
  /** Highest SWR (50 ohm) across the segment, above 1. Absent: any. */
  readonly swr?: number;
}

/**
 * How much each figure counts, 0 or more and not all 0. A design's score is the sum of weight × figure: decibels of gain
 * ahead at the path's elevation, of front to straight back, and of front to the loudest direction behind, less the worst
 * SWR (50 ohm) across the segment above 1. A figure of weight 0 is left out of what is traded.
 */
export interface BestWeights {
  readonly forward: number;
  readonly back: number;
  readonly rear: number;
  readonly swr: number;
}

/** Asks for the best lengths, spacing and coil of a fed upright with a reflector. */
export interface BestRequest {
  readonly kind: "best";
  /** The design to start from, with a reflector; its ground and soil model are those of every answer. */
  readonly plan: Plan;
  readonly look: TrialLook;
  /** Where the SWR counts; both the same: at that frequency only. */
  readonly segment_MHz: { readonly from: number; readonly to: number };
  readonly weights: BestWeights;
  readonly bounds: BestBounds;
  /** Reactance over resistance of the coil. Absent: without loss. */
  readonly coilQ?: number;
  /** Whole number; the same gives the same answer. */
  readonly seed: number;
  /** Designs of the front that are shown and solved one by one, 1 to 12. Absent: 12. */
  readonly shown?: number;
}
