import type { Plan } from "../../contract.ts";
import type { Range } from "./Range.ts";
import type { TrialLook } from "./TrialLook.ts";

/** The reflector walked away from the driven. */
export interface PaceRequest {
  readonly kind: "pace";
  readonly plan: Plan;
  readonly look: TrialLook;
  /** Reflector behind driven, in wavelengths at the plan's frequency. */
  readonly spacing_wl: Range;
  /**
   * "fixed": lengths as they are. "retuned": at each step the reflector is cut for the best front-to-back within 8 % of
   * its length and the driven to resonance.
   */
  readonly lengths: "fixed" | "retuned";
}
