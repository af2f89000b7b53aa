import type { Complex } from "../../contract.ts";
import type { Note } from "../../result.ts";

export type FrequencyUnit = "Hz" | "kHz" | "MHz" | "GHz";
/** Reflection coefficient, impedance or admittance. */
export type OnePortParameter = "S" | "Z" | "Y";
/** Real and imaginary; magnitude and degrees; 20 log₁₀ of the magnitude and degrees. */
export type PairFormat = "RI" | "MA" | "DB";

/** What the option line of a Touchstone file says about its numbers. */
export interface TouchstoneOptions {
  readonly unit: FrequencyUnit;
  readonly parameter: OnePortParameter;
  readonly format: PairFormat;
  readonly reference_ohm: number;
}

export interface TouchstonePoint {
  readonly frequency_MHz: number;
  readonly impedance_ohm: Complex;
}

/** A one-port file as read. */
export interface Touchstone {
  /** "1" for every file that states none. */
  readonly version: "1" | "2.0" | "2.1";
  readonly options: TouchstoneOptions;
  /** By rising frequency. */
  readonly points: readonly TouchstonePoint[];
  readonly comments: readonly string[];
  /** What was passed over. */
  readonly notes: readonly Note[];
}

/** What a bare "#" means. */
export const defaultOptions: TouchstoneOptions = { unit: "GHz", parameter: "S", format: "MA", reference_ohm: 50 };
