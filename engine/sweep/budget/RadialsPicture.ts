import type { Note } from "../../result.ts";

/** Radials as laid under every element, in plan order, and what they do. Apply with `withRadialLaying`. */
export interface RadialLaying {
  readonly height_m: number;
  readonly fields: readonly { readonly elementId: string; readonly count: number; readonly length_m: number }[];
  /** Wire that lies: Σ count × length, never over what was asked. */
  readonly wire_m: number;
  readonly forward_dBi: number;
  /** Absent without a reflector. */
  readonly frontToBack_dB?: number;
  readonly frontToRear_dB?: number;
  /** Part of the input that is not radiated, −10 log₁₀(radiated/input). */
  readonly loss_dB: number;
  readonly resistance_ohm: number;
  readonly reactance_ohm: number;
  readonly swr50: number;
}

/** The best laying of one length of wire, shared evenly. */
export interface BudgetPoint {
  readonly wire_m: number;
  readonly best: RadialLaying;
  /** What 10 m more would bring, from this point to the next; null at the last. */
  readonly slope_dBPer10m: number | null;
}

export interface HeightBudget {
  readonly height_m: number;
  /** Gain against wire, by rising length. */
  readonly curve: readonly BudgetPoint[];
  /** Wire from which 10 m more bring less than `knee_dBPer10m`; null: even at the end they bring more. */
  readonly knee_m: number | null;
  /** Every laying tried at the wire asked for with an even split, by rising count. */
  readonly counts: readonly RadialLaying[];
  /** The best at each split of the wire asked for; `firstPart` is the fed element's. One entry with one element. */
  readonly splits: readonly { readonly firstPart: number; readonly best: RadialLaying }[];
  /** Best of all at this height with the wire asked for. */
  readonly best: RadialLaying;
  /** Counts at which using all the wire asked for is worse than cutting the same radials shorter, and by how much ahead. */
  readonly cutShort: readonly {
    readonly asLong: RadialLaying;
    readonly shorter: RadialLaying;
    readonly gain_dB: number;
  }[];
}

export interface RadialsPicture {
  readonly kind: "radials";
  /** Made with the soil preview rather than the full model. */
  readonly isPreview: boolean;
  readonly wire_m: number;
  /** What the plan's own radials do. */
  readonly own: RadialLaying | null;
  readonly heights: readonly HeightBudget[];
  readonly knee_dBPer10m: number;
  readonly best: RadialLaying;
  readonly solves: number;
  readonly notes: readonly Note[];
}
