import { ETA0_ohm } from "../constants.ts";
import type { Terminated } from "../solve/solveTerminated.ts";

/**
 * Far field ahead and straight back for one ampere into the first fed base: 4 numbers each, Re, Im of the θ and φ parts
 * [√ohm], whose squares over `resistance_ohm` are the gain.
 */
export interface BeamField {
  readonly ahead: readonly number[];
  readonly behind: readonly number[];
  /** Input power of all ports over ½|I|². */
  readonly resistance_ohm: number;
}

/**
 * The field along the beam at one elevation over the fed base's current: unlike a gain in decibels it is smooth in
 * frequency, through a null behind as well, and so is the resistance, of which a root would not be.
 *
 * @param first index of the port whose current is the measure
 */
export function beamField(solved: Terminated, first: number, elevation_deg: number): BeamField {
  const re = solved.amperes[2 * first]!;
  const im = solved.amperes[2 * first + 1]!;
  const size = re * re + im * im;
  // |F|² 4π/(2η₀P) = |F/I|² 4π/(η₀ R), P = ½|I|²R
  const scale = Math.sqrt((4 * Math.PI) / ETA0_ohm) / size;
  const field = new Float64Array(4);
  const towards = (azimuth_rad: number): number[] => {
    solved.far.field(field, (elevation_deg * Math.PI) / 180, azimuth_rad);
    // F/I
    return [0, 2].flatMap((c) => [
      scale * (field[c]! * re + field[c + 1]! * im),
      scale * (field[c + 1]! * re - field[c]! * im),
    ]);
  };
  return { ahead: towards(0), behind: towards(Math.PI), resistance_ohm: (2 * solved.inputPower_W) / size };
}

/** Gain [dBi] of a field. */
export function gainOf(parts: readonly number[], resistance_ohm: number): number {
  return 10 * Math.log10(parts.reduce((sum, v) => sum + v * v, 0) / resistance_ohm);
}
