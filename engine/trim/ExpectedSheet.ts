import type { Complex, Ground, Plan } from "../contract.ts";
import type { BenchAllowance, BenchLengths, BenchState } from "../plan/PlanBench.ts";

export interface ExpectedRequest {
  readonly plan: Plan;
  readonly allowance: BenchAllowance;
}

/** A figure with what the soil may do to it: the least and greatest of the soils looked at. */
export interface Expected {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What the meter should show in one state at one pair of lengths. */
export interface ExpectedFigures {
  /** Where X passes through 0 on the way up, and R there; null where it does not within the frequencies looked at. */
  readonly resonance_MHz: Expected | null;
  readonly resonanceResistance_ohm: Expected | null;
  /** At the plan's frequency. */
  readonly resistance_ohm: Expected;
  readonly reactance_ohm: Expected;
  readonly swr: Expected;
  /** The least SWR within the frequencies looked at, and where; it is not where X = 0. */
  readonly leastSwr: Expected;
  readonly leastSwr_MHz: Expected;
  /** For drawing and for a file: the plan's own soil, evenly spaced. */
  readonly curve: readonly { readonly frequency_MHz: number; readonly impedance_ohm: Complex }[];
}

export type ConnectedBase = "meter" | "open" | "joined" | "loaded" | "fed";

/**
 * Steps of the measuring procedure in their order. Words for them are the page's.
 * "first-…": as cut long; the others at the plan's lengths.
 */
export type ExpectedStepKind =
  | "fit-long"
  | "first-driven-alone"
  | "trim-driven"
  | "ground-loss"
  | "first-reflector-alone"
  | "trim-reflector"
  | "reflector-joined"
  | "mutual"
  | "retrim"
  | "on-air-trim"
  | "reversed"
  | "record"
  | "prove"
  | "recheck";

/**
 * What to think of when a reading is not as expected. `limit` is the figure beyond which it applies.
 * Codes: loss-in-ground (R at X = 0 above the limit, ohm); reading-suspect (R below, ohm); elements-differ-R (ohm),
 * elements-differ-f (MHz); steep-side (the reflector alone resonates above, MHz); points-backwards (the same);
 * not-where-swr-is-least (MHz between the two); other-base-not-open; read-through-lead; still-long (X above, ohm);
 * mutual-off (ohm between the two).
 */
export interface AdviceRule {
  readonly code: string;
  readonly limit: number | null;
}

export interface ExpectedStep {
  readonly kind: ExpectedStepKind;
  /** From 1. */
  readonly number: number;
  /** Every element, in plan order. */
  readonly bases: readonly { readonly elementId: string; readonly base: ConnectedBase }[];
  readonly lengths_m: BenchLengths;
  /** Present where the meter is read. */
  readonly state?: BenchState;
  readonly figures?: ExpectedFigures;
  /** Agreeing to this is as good as it gets: instrument and model together. */
  readonly tolerance?: {
    readonly resistance_ohm: number;
    readonly reactance_ohm: number;
    readonly resonance_kHz: number;
  };
  /** Present where something is cut: how far resonance moves for what is cut off the meter's element, and how much to cut. */
  readonly cut?: {
    readonly elementId: string;
    readonly mmPerKHz: number;
    /** From the lengths of the step before to the target, by the engine. */
    readonly whole_mm: number;
    /** Cut this much first, then read again. */
    readonly first_mm: number;
  };
  /** "mutual": mutual impedance between the bases at the plan's frequency, others connected as the plan says. */
  readonly mutual_ohm?: { readonly resistance: Expected; readonly reactance: Expected };
  /** "retrim", "reflector-joined": current of the reflector over the driven's. */
  readonly currentRatio?: { readonly magnitude: number; readonly phase_deg: number };
  readonly advice: readonly AdviceRule[];
}

export interface ExpectedSheet {
  readonly frequency_MHz: number;
  /** The soils looked at: the plan's own first, then a drier and a wetter one; only the first over perfect ground. */
  readonly soils: readonly { readonly id: "planned" | "drier" | "wetter"; readonly ground: Ground }[];
  readonly from_MHz: number;
  readonly to_MHz: number;
  readonly steps: readonly ExpectedStep[];
  /** Where one more frequency was solved to check the curves: how far off they were [ohm]. */
  readonly error_ohm: number;
  readonly isPreview: boolean;
}
