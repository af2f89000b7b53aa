import type { RadialScreen } from "../contract.ts";

/** Upright conductor over the ground; several states of the antenna share its nodes. */
export interface VerticalLine {
  readonly x_m: number;
  readonly y_m: number;
  /** Radius of the conductor: where it stands in soil without radials, the soil begins here. */
  readonly radius_m: number;
  /** Heights of the current's nodes, ascending, ground or base first. */
  readonly z_m: Float64Array;
  /** states × nodes, complex interleaved: upward current at each node [A]. */
  readonly current: Float64Array;
}

/**
 * Straight pieces that lean or lie, in any direction. A low wire makes a ridge of field below it for which the points
 * are not laid out: measured on a level wire 0.1 wavelength long, 1e-4 of |dZ| at 0.05 wavelength above the ground,
 * 2e-3 at 0.02.
 */
export interface SlopingPieces {
  /** 3·S each: ends x, y, z. */
  readonly from_m: Float64Array;
  readonly to_m: Float64Array;
  /** S. */
  readonly radius_m: Float64Array;
  /** states × S × 2 ends, complex interleaved: current from `from_m` towards `to_m` [A]. */
  readonly current: Float64Array;
}

export interface ScreenInput {
  readonly k_radPerM: number;
  readonly omega_radPerS: number;
  readonly ground: { readonly relativePermittivity: number; readonly conductivity_SPerM: number };
  readonly screens: readonly RadialScreen[];
  readonly lines: readonly VerticalLine[];
  /** Absent: every conductor is an upright line, which is much the faster case. */
  readonly sloping?: SlopingPieces;
  /** Number of states S: port currents of one ampere, one port at a time. */
  readonly states: number;
}
