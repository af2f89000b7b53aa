import type { Complex } from "../../contract.ts";

/** The antenna's feed impedance at one frequency of a band. Bands are lists of these, frequencies rising. */
export interface FeedPoint {
  readonly frequency_MHz: number;
  readonly impedance_ohm: Complex;
}
