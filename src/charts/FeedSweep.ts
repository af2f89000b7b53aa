/** Impedance of one feedpoint over frequency: arrays of equal length, frequencies rising. */
export interface FeedSweep {
  readonly frequency_MHz: readonly number[];
  readonly resistance_ohm: readonly number[];
  readonly reactance_ohm: readonly number[];
}
