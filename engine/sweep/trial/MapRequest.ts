import type { Plan } from "../../contract.ts";
import type { Range } from "./Range.ts";
import type { TrialLook } from "./TrialLook.ts";

/** Spacing against the reflector's length. */
export interface MapRequest {
  readonly kind: "map";
  readonly plan: Plan;
  readonly look: TrialLook;
  readonly spacing_wl: Range;
  readonly reflectorHeight_m: Range;
}
