/** Figures along a line or over a grid, ready to draw; arrays of one length. Impedances are the first fed element's. */
export interface FigureCurves {
  readonly forward_dBi: readonly number[];
  readonly back_dBi: readonly number[];
  readonly frontToBack_dB: readonly number[];
  readonly worstRear_dBi: readonly number[];
  readonly frontToRear_dB: readonly number[];
  /** Absent where no arrival angles were given. */
  readonly pathGain_dBi?: readonly number[];
  readonly resistance_ohm: readonly number[];
  readonly reactance_ohm: readonly number[];
  readonly swr50: readonly number[];
}
