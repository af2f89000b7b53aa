import type { Complex } from "../contract.ts";
import type { Note } from "../result.ts";

/** What a view wants to know about one plan. Angles in degrees; azimuth 0 is forward along the beam. */
export interface ReadoutRequest {
  /** Elevation at which the azimuth cut is taken. */
  readonly azimuthCutElevation_deg: number;
  /** The elevation that carries the user's path. */
  readonly pathElevation_deg: number;
  /** Elevations of the ladder's rungs, low to high. */
  readonly rungs_deg: readonly number[];
  /** Full width of the sector centred on straight back in which the worst (loudest) direction is sought. */
  readonly rearSector_deg: number;
}

/** One elevation: how loud ahead, straight back, and in the worst direction of the rear sector. */
export interface Rung {
  readonly elevation_deg: number;
  readonly forward_dBi: number;
  readonly back_dBi: number;
  readonly worstRear_dBi: number;
  /** Azimuth at which the rear sector is loudest. */
  readonly worstRearAzimuth_deg: number;
  /** forward − back. */
  readonly frontToBack_dB: number;
  /** forward − worst in the rear sector. */
  readonly frontToRear_dB: number;
}

/** Gain along a line of directions, ready to draw. Arrays have equal length. */
export interface Cut {
  readonly angle_deg: readonly number[];
  readonly gain_dBi: readonly number[];
}

/** Everything the workbench shows of one plan at one frequency: plain data, so that it can cross from a worker. */
export interface PlanReadout {
  readonly feeds: readonly { readonly elementId: string; readonly impedance_ohm: Complex; readonly swr50: number }[];
  readonly baseCurrents: readonly { readonly elementId: string; readonly current: Complex }[];
  /** Radiated through the upper half space / input, 0..1. */
  readonly efficiency: number;
  /** Through the beam's vertical plane: angle 0 is the horizon ahead, 90 overhead, 180 the horizon behind. */
  readonly elevationCut: Cut;
  /** At `request.azimuthCutElevation_deg`: angle is azimuth −180..180, counter-clockwise from forward. */
  readonly azimuthCut: Cut;
  readonly ladder: readonly Rung[];
  readonly path: Rung;
  /** Width between the −3 dB points of the azimuth cut around forward; null when it never falls that far. */
  readonly halfPowerWidth_deg: number | null;
  /** Currents in radials that are solved as wires, and in what joins them. Absent: none are. */
  readonly radialCurrents?: readonly {
    readonly kind: "radial" | "bus" | "bond";
    /** The element a radial belongs to; the first of the two a bus or bond lies between. */
    readonly elementId: string;
    /** Forward and left of the origin. */
    readonly from_m: readonly [number, number];
    readonly to_m: readonly [number, number];
    /** Distances from `from_m`, and |I| there over the first fed base's. */
    readonly at_m: readonly number[];
    readonly relative: readonly number[];
  }[];
  readonly notes: readonly Note[];
}

/** Feed impedance of each fed element across a band: arrays over frequency. */
export interface BandReadout {
  readonly frequency_MHz: readonly number[];
  readonly feeds: readonly {
    readonly elementId: string;
    readonly resistance_ohm: readonly number[];
    readonly reactance_ohm: readonly number[];
    readonly swr50: readonly number[];
  }[];
  /** Along the beam at the elevation asked for; absent where none was. */
  readonly beam?: {
    readonly elevation_deg: number;
    readonly forward_dBi: readonly number[];
    /** Forward over straight back. */
    readonly frontToBack_dB: readonly number[];
  };
  /** Absent: every frequency was solved. Else these were, and the rest lie on a curve through them. */
  readonly interpolated?: {
    readonly solved_MHz: readonly number[];
    /** Where one frequency was solved to check the curve through the others: how far off that was [ohm]. Elsewhere it may be twice that. */
    readonly error_ohm: number;
    /** … and how far off the gain ahead was, and the field behind as a part of that ahead [dB, 1]. */
    readonly error_dB?: number;
    readonly errorBehind?: number;
  };
}

export interface BandRequest {
  readonly from_MHz: number;
  readonly to_MHz: number;
  readonly points: number;
  /** Where the beam is wanted as well: the elevation at which it is looked at. */
  readonly elevation_deg?: number;
}
