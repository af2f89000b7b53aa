import type { Complex } from "../../contract.ts";
import type { Line } from "../line/Line.ts";

/** Node names are the caller's; this one is ground, the antenna's radials and the cables' shields. */
export const GROUND = "ground";

/** A part between two nodes. Lines have both shields on ground; their two ends are `from` and `to`. */
export type Part = { readonly id: string; readonly from: string; readonly to: string } & (
  | { readonly kind: "resistor"; readonly resistance_ohm: number }
  | { readonly kind: "coil"; readonly inductance_uH: number; readonly q?: number }
  | { readonly kind: "capacitor"; readonly capacitance_pF: number; readonly q?: number }
  | { readonly kind: "line"; readonly line: Line; readonly length_m: number }
  /** A relay's contact or a link: closed, no voltage across; open, no current through. */
  | { readonly kind: "contact"; readonly closed: boolean }
);

/** An antenna and what feeds it. Plain data. */
export interface Network {
  /** Node the rig's line is joined to, against ground. */
  readonly source: string;
  readonly parts: readonly Part[];
  /** Nodes of the antenna's bases, in the order of its impedance matrix. */
  readonly bases: readonly string[];
}

/** One end of a part: the current into it there. Peak phasors at the power asked for. */
export interface PartEnd {
  readonly node: string;
  readonly voltage_V: Complex;
  readonly current_A: Complex;
  readonly power_W: number;
}

export interface PartReadout {
  readonly id: string;
  readonly kind: Part["kind"];
  readonly from: PartEnd;
  readonly to: PartEnd;
  readonly dissipated_W: number;
  /** Lines: the larger of the two ends (more may stand between them). All others: across, and through. */
  readonly voltage_Vrms: number;
  readonly voltage_Vpeak: number;
  readonly current_Arms: number;
  readonly current_Apeak: number;
}

export interface BaseReadout {
  readonly node: string;
  readonly voltage_V: Complex;
  /** Into the element. */
  readonly current_A: Complex;
  /** Drive-point impedance V/I; not finite at a base without current. */
  readonly impedance_ohm: Complex;
  /** Below zero where the element gives power back to the harness. */
  readonly power_W: number;
  readonly voltage_Vrms: number;
  readonly current_Arms: number;
}

export interface NetworkSolution {
  readonly inputImpedance_ohm: Complex;
  readonly power_W: number;
  /** Peak phasors; their common phase is that of the source's voltage at zero. */
  readonly voltages_V: Readonly<Record<string, Complex>>;
  readonly parts: readonly PartReadout[];
  readonly bases: readonly BaseReadout[];
  /** Base currents over the first one's. */
  readonly currentRatios: readonly Complex[];
  readonly dissipated_W: number;
  readonly antenna_W: number;
  /** |input − dissipated − antenna| / input. */
  readonly imbalance: number;
  readonly loss_dB: number;
}
