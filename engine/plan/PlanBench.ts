import type { Complex, Ground } from "../contract.ts";
import type { PlanCable } from "./SavedPlan.ts";

/**
 * What is connected while the meter reads. The meter sits at the driven's base, or at the reflector's for
 * "reflector-alone" and "reversed".
 * - "driven-alone", "reflector-alone": every other base stands open.
 * - "reflector-joined": every other base is connected as the plan says.
 * - "reversed": the reflector is fed and the driven carries what the reflector carries otherwise.
 */
export type BenchState = "driven-alone" | "reflector-alone" | "reflector-joined" | "reversed";

/** Lengths of the uprights, base to tip. */
export interface BenchLengths {
  readonly driven_m: number;
  /** Absent: there is no reflector. */
  readonly reflector_m?: number;
}

/** One frequency of a reading. */
export interface BenchPoint {
  readonly frequency_MHz: number;
  readonly resistance_ohm: number;
  readonly reactance_ohm: number;
}

/** What the meter showed at one visit, in one state. */
export interface BenchReading {
  readonly id: string;
  readonly state: BenchState;
  /** As typed: year-month-day. */
  readonly date: string;
  /** As they stood when it was read. */
  readonly lengths_m: BenchLengths;
  /** Where the points were read: at the base itself, or through the lead of the bench. */
  readonly at: "base" | "lead";
  readonly points: readonly BenchPoint[];
  readonly remark?: string;
}

/** Coax between the meter and the base. */
export interface BenchLead {
  readonly cable: PlanCable;
  readonly length_m: number;
}

/** By how much longer than planned things are cut at first, in percent. */
export interface BenchAllowance {
  readonly driven_percent: number;
  readonly reflector_percent: number;
  readonly radial_percent: number;
}

export type GroundState = "dry" | "moist" | "wet" | "frozen" | "snow";
export type OtherBases = "open" | "joined" | "loaded" | "fed" | "none";

/** One line of the log. Figures that were not taken are absent. */
export interface LogEntry {
  readonly id: string;
  /** Year-month-day, and hour:minute where it was noted. */
  readonly date: string;
  readonly time?: string;
  readonly ground: GroundState;
  readonly who?: string;
  /** Id of the element that was fed. */
  readonly fed: string;
  readonly others: OtherBases;
  readonly frequency_MHz?: number;
  readonly resistance_ohm?: number;
  readonly reactance_ohm?: number;
  readonly swr?: number;
  /** Where X was 0. */
  readonly resonance_MHz?: number;
  readonly action?: string;
  readonly remark?: string;
}

/** Two readings of one distant station taken close in time, in dB of any one scale. */
export interface OnAirPair {
  readonly forward_dB: number;
  readonly reverse_dB: number;
}

/** What readings have shown one element to be. */
export interface MeasuredElement {
  readonly elementId: string;
  /** The upright acts as if it were this many times as long as it was cut. */
  readonly lengthFactor: number;
  /** What its ground adds in series at the base, over what the plan's own model says. */
  readonly series_ohm: Complex;
}

/** A correction of the plan by readings; `asMeasuredPlan` applies it. */
export interface AsMeasured {
  readonly date: string;
  readonly elements: readonly MeasuredElement[];
  /** Absent: the plan's own. */
  readonly ground?: Ground;
  /** Mutual impedance over the model's. For information: no plan can carry it. */
  readonly mutualScale?: number;
}

export interface SiteLocation {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/** What belongs to building and measuring. Every part is optional. */
export interface PlanBench {
  readonly lead?: BenchLead;
  readonly allowance?: BenchAllowance;
  readonly readings?: readonly BenchReading[];
  readonly log?: readonly LogEntry[];
  readonly onAir?: readonly OnAirPair[];
  readonly asMeasured?: AsMeasured;
  /** How far east of true north a compass points. */
  readonly declination_deg?: number;
  /** Where the declination is from, and of what year. */
  readonly declinationSource?: string;
  /** Of the driven's base. */
  readonly location?: SiteLocation;
}
