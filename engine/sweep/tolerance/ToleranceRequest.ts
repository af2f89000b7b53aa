import type { Plan } from "../../contract.ts";
import type { TrialLook } from "../trial/TrialLook.ts";

/** Asks how far off a pair may be built, and what its figures then are. */
export interface ToleranceRequest {
  readonly kind: "tolerance";
  readonly plan: Plan;
  readonly look: TrialLook;
  /** Elevations of the ladder, low to high. */
  readonly rungs_deg: readonly number[];
  readonly azimuthCutElevation_deg: number;
  /** Each is off by up to this much either way, all within equally likely; 0: exact. */
  readonly errors: {
    readonly driven_m: number;
    readonly reflector_m: number;
    readonly spacing_m: number;
    /** Thickness of the uprights, as a part of it, 0 to 0.5. */
    readonly thickness: number;
    readonly heading_deg: number;
  };
  /** Soil anywhere from one to the other, by the logarithm of its constants. Absent: as in the plan, or no soil. */
  readonly soil?: { readonly dry: SoilConstants; readonly wet: SoilConstants };
  /** Designs drawn at random, 20 to 5000. */
  readonly draws: number;
  readonly seed: number;
}

export interface SoilConstants {
  readonly relativePermittivity: number;
  readonly conductivity_SPerM: number;
}
