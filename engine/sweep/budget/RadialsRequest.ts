import type { Plan } from "../../contract.ts";
import type { TrialLook } from "../trial/TrialLook.ts";

/** Asks how to lay a length of wire as radials: how many, how long, and how much under each element. */
export interface RadialsRequest {
  readonly kind: "radials";
  /** Its radials' thickness and covering are kept; their number and length are what is asked. Ground: soil. */
  readonly plan: Plan;
  /** Wire at hand for the radials of all elements together. */
  readonly wire_m: number;
  readonly look: TrialLook;
  /** Heights at which radials are tried, each by itself: 0 lying, above 0 raised, below 0 in the soil. One to three. */
  readonly heights_m: readonly number[];
  /** Where 10 m more bring less than this, wire stops being worth it. Absent: 0.1 dB. */
  readonly knee_dBPer10m?: number;
  /** Most radials under one element, at most 120; many take long. Absent: 60. */
  readonly mostRadials?: number;
}
