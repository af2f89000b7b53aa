import { C0_mPerS } from "./constants.ts";

/** International foot [m]; exact (1959 agreement). */
export const FOOT_m = 0.3048;
/** Inch [m]; exact. */
export const INCH_m = 0.0254;

/** λ = c/f [m]. */
export function wavelength_m(frequency_MHz: number): number {
  return C0_mPerS / (frequency_MHz * 1e6);
}

/**
 * Diameter of solid wire of American Wire Gauge `n`: 0.127 mm · 92^((36 − n)/39), the defining geometric series
 * (ASTM B258). Gauges 0, 00, 000 and 0000 are n = 0, −1, −2, −3.
 */
export function awgDiameter_mm(n: number): number {
  return 0.127 * 92 ** ((36 - n) / 39);
}

export interface FeetInches {
  readonly sign: 1 | -1;
  readonly feet: number;
  /** 0..11 */
  readonly inches: number;
  /** 0..7 */
  readonly eighths: number;
}

/** Splits a length to the nearest eighth of an inch, ties away from zero; rounding carries into inches and feet. */
export function toFeetInches(length_m: number): FeetInches {
  const eighths = Math.round((Math.abs(length_m) / INCH_m) * 8);
  return {
    sign: length_m < 0 && eighths > 0 ? -1 : 1,
    feet: Math.floor(eighths / 96),
    inches: Math.floor(eighths / 8) % 12,
    eighths: eighths % 8,
  };
}

/** The length that `toFeetInches` split, exact but for rounding in the last place. */
export function fromFeetInches(split: FeetInches): number {
  return split.sign * (split.feet * FOOT_m + (split.inches + split.eighths / 8) * INCH_m);
}
