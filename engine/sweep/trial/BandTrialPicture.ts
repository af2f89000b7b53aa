import type { BandGood } from "./BandTrialRequest.ts";
import type { ChartError } from "./ChartError.ts";
import type { FigureCurves } from "./FigureCurves.ts";

/** Stretches of the band, low to high [MHz]; one that reaches the band's edge may go on beyond it. */
export type Stretches = readonly { readonly from_MHz: number; readonly to_MHz: number }[];

export interface BandTrialPicture {
  readonly kind: "band";
  readonly isPreview: boolean;
  readonly frequency_MHz: readonly number[];
  readonly figures: FigureCurves;
  readonly good: BandGood;
  /** Where each is good, and where all three are. */
  readonly stretches: {
    readonly swr: Stretches;
    readonly frontToBack: Stretches;
    readonly forward: Stretches;
    readonly all: Stretches;
  };
  /** Where front-to-back passes zero and the beam turns round [MHz]. */
  readonly reversals_MHz: readonly number[];
  readonly error: ChartError;
}
