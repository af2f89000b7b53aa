import type { Line } from "../line/Line.ts";

/** One part of a match. Quality factors are taken as the same at every frequency; absent: no loss. */
export type Section =
  | { readonly kind: "series-coil" | "shunt-coil"; readonly inductance_uH: number; readonly q?: number }
  | { readonly kind: "series-capacitor" | "shunt-capacitor"; readonly capacitance_pF: number; readonly q?: number }
  /** A length of line on the way; `parallel` equal lengths side by side divide its impedance. */
  | { readonly kind: "line"; readonly line: Line; readonly length_m: number; readonly parallel: 1 | 2 }
  /** A length of line hung across, its far end open or shorted. */
  | { readonly kind: "stub"; readonly end: "open" | "shorted"; readonly line: Line; readonly length_m: number }
  /**
   * The element itself cut shorter or longer: its reactance moves by so much, taken as the same over the band and its
   * resistance as unmoved. An estimate, to be replaced by a solution of the antenna so cut.
   */
  | { readonly kind: "retrim"; readonly reactance_ohm: number };

/** The parts of a match in the order from antenna to rig. */
export type Ladder = readonly Section[];
