import type { Plan } from "../../contract.ts";
import type { ChartError } from "./ChartError.ts";
import type { FigureCurves } from "./FigureCurves.ts";
import type { Range } from "./Range.ts";
import type { TrialLook } from "./TrialLook.ts";

/** The figures across a band, the wires as they are. */
export interface BandTrialRequest {
  readonly kind: "band";
  readonly plan: Plan;
  readonly look: TrialLook;
  readonly frequency_MHz: Range;
  /** What still counts as good. Absent: SWR up to 2, front-to-back from 6 dB, gain ahead within 0.5 dB of its best. */
  readonly good?: BandGood;
}

export interface BandGood {
  readonly swr: number;
  readonly frontToBack_dB: number;
  readonly forwardWithin_dB: number;
}

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
