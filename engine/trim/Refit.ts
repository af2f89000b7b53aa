import type { Complex, Ground, Plan } from "../contract.ts";
import type { AsMeasured, BenchReading, BenchState } from "../plan/PlanBench.ts";

/** Readings are at the base: `atBase` has taken the lead out. */
export interface RefitRequest {
  readonly plan: Plan;
  readonly readings: readonly BenchReading[];
  /** Whether a drier and a wetter soil are tried as well. */
  readonly trySoils: boolean;
  /** Elevation of the path, for gain and front-to-back. */
  readonly elevation_deg: number;
  /** As typed or of today; kept in the correction. */
  readonly date: string;
}

/** A fitted figure and its standard error; `error` is null where it was not fitted. */
export interface Estimate {
  readonly value: number;
  readonly error: number | null;
  /**
   * Where it comes from: from the readings; mostly from what is assumed beforehand, since the readings hardly tell; or not
   * fitted at all. A value at the end of what is searched is "assumed".
   */
  readonly from: "readings" | "assumed" | "not-fitted";
}

export interface RefitElement {
  readonly elementId: string;
  readonly lengthFactor: Estimate;
  readonly resistance_ohm: Estimate;
  readonly reactance_ohm: Estimate;
}

/** Two fitted figures that the readings cannot tell apart. */
export interface Alike {
  readonly first: string;
  readonly second: string;
  /** −1..1: of their errors. */
  readonly correlation: number;
}

export interface RefitFigures {
  readonly impedance_ohm: Complex;
  readonly swr: number;
  readonly forward_dBi: number;
  readonly frontToBack_dB: number;
  readonly currentRatio: { readonly magnitude: number; readonly phase_deg: number } | null;
}

export interface Refit {
  readonly elements: readonly RefitElement[];
  readonly mutualScale: Estimate;
  /** At the plan's frequency, of the fitted model; `error_ohm` is the standard error of its size. */
  readonly mutual_ohm: { readonly value: Complex; readonly error_ohm: number } | null;
  /** By Z₁₂ = ±√(Z₂₂(Z₁₁ − Z₁)) from the readings themselves at the plan's frequency, where all three are there. */
  readonly mutualDirect_ohm: Complex | null;
  readonly soil: {
    readonly ground: Ground;
    readonly id: "planned" | "drier" | "wetter";
    /** Soils that fit the readings about as well: the readings do not tell between them. */
    readonly alike: readonly ("planned" | "drier" | "wetter")[];
  };
  readonly alike: readonly Alike[];
  /** Root mean square of what is left, in parts of the readings' own uncertainty: about 1 when the model fits. */
  readonly misfit: number;
  readonly perReading: readonly { readonly id: string; readonly state: BenchState; readonly rms_ohm: number }[];
  readonly asMeasured: AsMeasured;
  readonly planned: RefitFigures;
  readonly measured: RefitFigures;
  /** What to cut off (below 0: to add) to come to the target, with the correction; null without a state to trim. */
  readonly nextCut: readonly {
    readonly elementId: string;
    readonly cut_mm: number;
    readonly error_mm: number;
    readonly mmPerKHz: number;
    /** By the user's own readings with a cut between them. */
    readonly ownMmPerKHz: number | null;
  }[];
  /** How far the interpolated model was off where it was solved to check [ohm]. */
  readonly error_ohm: number;
}
