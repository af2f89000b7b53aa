import type { Complex } from "../../contract.ts";
import { cx } from "../cx.ts";

/**
 * Reflection coefficient of an impedance, Γ = (Z − Z₀)/(Z + Z₀), Z₀ real [ohm; 1]. An infinite impedance (either part)
 * is an open end: Γ = 1.
 */
export function toReflection(impedance_ohm: Complex, reference_ohm: number): Complex {
  const { re, im } = impedance_ohm;
  if (Math.abs(re) === Number.POSITIVE_INFINITY || Math.abs(im) === Number.POSITIVE_INFINITY) return cx.one;
  return cx.div({ re: re - reference_ohm, im }, { re: re + reference_ohm, im });
}
