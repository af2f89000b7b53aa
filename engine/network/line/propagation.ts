import { C0_mPerS } from "../../constants.ts";
import type { Complex } from "../../contract.ts";
import type { Line } from "./Line.ts";

export interface Propagation {
  /** γ = α + jβ: α in Np/m, β in rad/m. */
  readonly gamma: Complex;
  readonly impedance_ohm: Complex;
}

/** Decibels in a neper: 20/ln 10. */
export const DB_PER_NP = 20 / Math.LN10;

/**
 * How a wave runs along a line at one frequency.
 *
 *   α = (k₁√f + k₂f)/(100 m · 8.686 dB/Np),  β = 2πf/(v c),  Z₀ = R₀ (1 − j (α_metal − α_insulation)/β)
 *
 * The angle of Z₀ is left out for a line whose `impedanceAngle` is "real". With either, series resistance and shunt
 * conductance per metre come out at or above zero, so that no length of line ever gives power.
 *
 * Accuracy: first order in α/β; what is left out is about (α/β)², 1e-3 of Z₀ for thin cable at 1.8 MHz, less above.
 * The velocity is taken as the same at every frequency.
 * Source: the low-loss line of any textbook (D. M. Pozar, Microwave Engineering, section 2.7, from memory).
 */
export function propagation(line: Line, frequency_MHz: number): Propagation {
  const perMetre = 1 / (100 * DB_PER_NP);
  const metal = line.root_dBPer100m * Math.sqrt(frequency_MHz) * perMetre;
  const insulation = line.linear_dBPer100m * frequency_MHz * perMetre;
  const beta = (2 * Math.PI * frequency_MHz * 1e6) / (line.velocityFactor * C0_mPerS);
  const angle = line.impedanceAngle === "real" ? 0 : (metal - insulation) / beta;
  return {
    gamma: { re: metal + insulation, im: beta },
    impedance_ohm: { re: line.impedance_ohm, im: -line.impedance_ohm * angle },
  };
}
