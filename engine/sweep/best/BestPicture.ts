import type { Complex } from "../../contract.ts";
import type { Note } from "../../result.ts";

/** What is traded between designs. */
export interface BestFigures {
  readonly forward_dBi: number;
  readonly frontToBack_dB: number;
  readonly frontToRear_dB: number;
  /** Worst across the segment, 50 ohm. */
  readonly swr: number;
}

/** One design: apply it with `withBestDesign`. */
export interface BestDesign {
  readonly driven_m: number;
  readonly reflector_m: number;
  readonly spacing_m: number;
  /** Reactance in the reflector's base at the plan's frequency; 0: joined. */
  readonly coil_ohm: number;
  /** Uprights and radials together. */
  readonly wire_m: number;
  readonly figures: BestFigures;
  /** At the plan's frequency. */
  readonly impedance_ohm: Complex;
  /** By the weights asked for. */
  readonly score: number;
  /** Its figures come from solves of this very design; else they lie on the interpolation. */
  readonly isSolved: boolean;
}

/** The trade: no design of the front is bettered in one figure without another that is worse. */
export interface BestPicture {
  readonly kind: "best";
  /** Made with the soil preview rather than the full model. */
  readonly isPreview: boolean;
  /** The design the search began with (bounds do not hold it). */
  readonly start: BestDesign;
  /** Figures that were traded, those of a weight above 0. */
  readonly traded: readonly (keyof BestFigures)[];
  /** A few designs spread over the front, by falling score. */
  readonly front: readonly BestDesign[];
  /** Every design found on the front, on the interpolation. */
  readonly dots: readonly BestFigures[];
  /** The best of `front` and `start` by score, solved where both are. */
  readonly pick: BestDesign;
  /** The start is better by its score than all that the bounds allow, or as good. */
  readonly isStartBest: boolean;
  /** Absent until all of the front is solved: how far the interpolation was off there, at most. */
  readonly error?: { readonly forward_dB: number; readonly frontToBack_dB: number; readonly swr: number };
  readonly solves: number;
  readonly notes: readonly Note[];
}
