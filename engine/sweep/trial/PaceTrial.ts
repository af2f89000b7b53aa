import type { Plan } from "../../contract.ts";
import type { ChartError } from "./ChartError.ts";
import type { FigureCurves } from "./FigureCurves.ts";
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

export interface PacePicture {
  readonly kind: "pace";
  /** Made with the soil preview rather than the full model. */
  readonly isPreview: boolean;
  readonly spacing_wl: readonly number[];
  readonly spacing_m: readonly number[];
  readonly figures: FigureCurves;
  readonly drivenHeight_m: readonly number[];
  readonly reflectorHeight_m: readonly number[];
  /** "retuned": steps at which the reflector came to the end of its 8 %, or no length within them made the driven resonant. */
  readonly atLimit?: readonly number[];
  /** Steps at which something is best. */
  readonly best: { readonly frontToBack: number; readonly frontToRear: number; readonly forward: number };
  /** Where the reflector stands in the plan; null outside the walk. */
  readonly here_wl: number | null;
  readonly error: ChartError;
}
