/** A cable as a person describes it, or as the table lists it. Plain data. */
export interface LineType {
  readonly id: string;
  readonly name: string;
  /** Nominal characteristic impedance. */
  readonly impedance_ohm: number;
  /** Speed of the wave over that of light, 0 to 1. */
  readonly velocityFactor: number;
  /** Matched loss: stated at some frequencies, or as the two constants of k₁√f + k₂f. */
  readonly loss: readonly LossPoint[] | LossConstants;
  /**
   * "by-loss" (and where absent): the impedance gets the small angle that goes with its loss.
   * "real": it is the nominal one at every frequency, as most hand formulas take it.
   */
  readonly impedanceAngle?: "by-loss" | "real";
  /** Where the figures come from. */
  readonly source?: string;
}

export interface LossPoint {
  readonly frequency_MHz: number;
  readonly loss_dBPer100m: number;
}

/** Loss = root √f + linear f with f in MHz [dB per 100 m]. The root is loss in metal (skin effect), the rest in insulation. */
export interface LossConstants {
  readonly root_dBPer100m: number;
  readonly linear_dBPer100m: number;
}
