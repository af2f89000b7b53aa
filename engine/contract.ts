/**
 * The engine's public types for wires and plans: plain, JSON-able data. Units are in the names; conventions are in
 * `constants.ts`. These shapes are fixed: a change may only add.
 */
import type { Note } from "./result.ts";

export interface Complex {
  readonly re: number;
  readonly im: number;
}

export type Ground =
  | { readonly kind: "free-space" }
  | { readonly kind: "perfect" }
  | { readonly kind: "soil"; readonly relativePermittivity: number; readonly conductivity_SPerM: number };

/**
 * How soil acts on the currents (with `ground.kind` "soil" only).
 * - "full-wave": half-space Green's functions; every radial is a wire on, above or in the soil.
 * - "screen": a quick preview. Currents over a perfect ground, corrected for soil and radials by the compensation
 *   theorem; radials are given by count, length and thickness and are not meshed.
 * Both take the far field with the plane-wave reflection coefficients of the soil.
 */
export type SoilModel = "screen" | "full-wave";

export interface WireInput {
  readonly id: string;
  readonly from_m: readonly [number, number, number];
  readonly to_m: readonly [number, number, number];
  readonly radius_m: number;
  /** Absent: perfect conductor. */
  readonly conductivity_SPerM?: number;
  /** Absent: the engine chooses. */
  readonly segments?: number;
  /** A sheath of this outer radius, taken as thin and without loss. Absent: bare. */
  readonly insulation?: { readonly radius_m: number; readonly relativePermittivity: number };
}

/**
 * A gap in a wire, at a fraction 0..1 of its length from `from_m`. At 0 or 1 the gap lies between that end and what
 * it meets there: the ground surface (perfect ground, "screen") or the junction with other wires. Ends closer than
 * 1e-6 m are joined. "load" is a series impedance in the gap.
 */
export interface PortInput {
  readonly id: string;
  readonly wire: string;
  readonly position: number;
  readonly termination:
    | { readonly kind: "voltage"; readonly volts: Complex }
    | { readonly kind: "current"; readonly amperes: Complex }
    | { readonly kind: "load"; readonly impedance_ohm: Complex }
    | { readonly kind: "short" }
    | { readonly kind: "open" };
  /** In series with the gap, between it and its termination; its loss counts as a load's. Absent: nothing. */
  readonly series_ohm?: Complex;
}

/** Radials of one element as the "screen" preview sees them. */
export interface RadialScreen {
  readonly x_m: number;
  readonly y_m: number;
  readonly count: number;
  readonly length_m: number;
  readonly radius_m: number;
}

export interface WireProblem {
  readonly frequency_Hz: number;
  readonly ground: Ground;
  /** Absent: "screen". */
  readonly soilModel?: SoilModel;
  /** For "screen". Absent or empty: currents exactly as over perfect ground, no soil loss, and a note that says so. */
  readonly screens?: readonly RadialScreen[];
  readonly wires: readonly WireInput[];
  readonly ports: readonly PortInput[];
}

export interface PortResult {
  readonly id: string;
  /** Current into the wire away from the junction or ground; voltage of the wire against it. */
  readonly current_A: Complex;
  readonly voltage_V: Complex;
  readonly impedance_ohm: Complex;
}

export interface WireSolution {
  readonly ports: readonly PortResult[];
  readonly inputPower_W: number;
  /** Through the upper half space (whole sphere in free space), from the far field. */
  readonly radiatedPower_W: number;
  readonly conductorLoss_W: number;
  readonly loadLoss_W: number;
  readonly notes: readonly Note[];
  /** Total gain over both polarisations. −Infinity where the field is exactly zero. */
  gain_dBi(elevation_deg: number, azimuth_deg: number): number;
}

export interface RadialField {
  readonly count: number;
  readonly length_m: number;
  readonly diameter_mm: number;
  /** 0: lying on the soil. Above 0: raised, and the element's base with it. Below 0: buried that deep. */
  readonly height_m: number;
  /**
   * Absent: `count` equal radials of `length_m`, evenly spread. Else as many as `count`, each with its own direction
   * (counter-clockwise from the beam) and length; `length_m` is then what the preview takes for all of them.
   */
  readonly each?: readonly { readonly direction_deg: number; readonly length_m: number }[];
  /** Absent: bare. */
  readonly insulation?: { readonly diameter_mm: number; readonly relativePermittivity: number };
}

export type ElementBase =
  | { readonly kind: "fed"; readonly current?: { readonly magnitude: number; readonly phase_deg: number } }
  /** Base joined straight to its radials: a parasitic element. */
  | { readonly kind: "joined" }
  | { readonly kind: "loaded"; readonly resistance_ohm: number; readonly reactance_ohm: number }
  | { readonly kind: "open" };

export interface ElementPlan {
  readonly id: string;
  readonly forward_m: number;
  readonly left_m: number;
  /** Length of the upright conductor, base to tip. */
  readonly height_m: number;
  readonly diameter_mm: number;
  readonly conductor: "copper" | "aluminium" | "perfect";
  readonly base: ElementBase;
  /**
   * In series between the base and whatever it is connected to: what readings have shown its ground to add over what the
   * model says, so the resistance may be below 0. Absent: nothing.
   */
  readonly baseSeries?: { readonly resistance_ohm: number; readonly reactance_ohm: number };
  readonly radials: RadialField;
  /** A rod driven into the soil under the base and joined to it; `length_m` in soil. Full-wave soil only. */
  readonly stake?: { readonly length_m: number; readonly diameter_mm: number };
}

/** How the radial fields of neighbouring elements meet, where they are wires. */
export interface FieldMeeting {
  /**
   * "overlap": each field runs on, insulated from the other where they cross. "stop": radials end short of the line midway
   * between the elements. "bus": they end on a wire laid along that line.
   */
  readonly radials: "overlap" | "stop" | "bus";
  /** A wire joins the bases. */
  readonly bonded: boolean;
}

/** A saved plan may hold more (site, path, feed line, readings); these fields are what the solver needs. */
export interface Plan {
  readonly format: "hindwire-plan";
  readonly version: 1;
  readonly title: string;
  readonly frequency_MHz: number;
  readonly ground: Ground;
  readonly soilModel: SoilModel;
  readonly elements: readonly ElementPlan[];
  /** Absent: overlapping, not bonded. */
  readonly fields?: FieldMeeting;
}

export interface PlanSolution {
  /** One per fed element, in plan order. */
  readonly feeds: readonly { readonly elementId: string; readonly impedance_ohm: Complex; readonly swr50: number }[];
  /** One per element; scaled so that the first fed element's is 1. */
  readonly baseCurrents: readonly { readonly elementId: string; readonly current: Complex }[];
  /** Radiated through the upper half space / input. */
  readonly efficiency: number;
  readonly notes: readonly Note[];
  gain_dBi(elevation_deg: number, azimuth_deg: number): number;
}
