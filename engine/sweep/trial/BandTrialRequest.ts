import type { Plan } from "../../contract.ts";
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
