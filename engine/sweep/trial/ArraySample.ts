import type { Note } from "../../result.ts";

/** Directions in which a sample's fields are kept: every elevation at every azimuth. */
export interface Directions {
  readonly elevations_deg: readonly number[];
  /** 0 ahead, counter-clockwise. */
  readonly azimuths_deg: readonly number[];
}

/** One solve of all wires with every base as a port, free of what is connected to the bases. Plain data. */
export interface ArraySample {
  readonly frequency_MHz: number;
  /** Open-circuit impedance matrix over all elements, row-major, re and im: 2·P·P. */
  readonly impedance_ohm: readonly number[];
  /**
   * Far field for 1 A into one base, the others open: [port][elevation][azimuth][θre, θim, φre, φim], flat, seen from the
   * plan's origin [√ohm]. The square of what base currents make of it, over the resistance that takes their power, is the gain.
   */
  readonly fields: readonly number[];
  readonly notes: readonly Note[];
}
