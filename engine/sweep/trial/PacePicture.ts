import type { ChartError } from "./ChartError.ts";
import type { FigureCurves } from "./FigureCurves.ts";

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
