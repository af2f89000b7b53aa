import type { Complex } from "../../contract.ts";
import { cx } from "../cx.ts";

/** Impedance of a reflection coefficient, Z = Z₀ (1 + Γ)/(1 − Γ) [ohm]. Γ = 1, an open end, gives an infinite resistance. */
export function fromReflection(reflection: Complex, reference_ohm: number): Complex {
  if (reflection.re === 1 && reflection.im === 0) return { re: Number.POSITIVE_INFINITY, im: 0 };
  const { re, im } = reflection;
  return cx.scale(cx.div({ re: 1 + re, im }, { re: 1 - re, im: -im }), reference_ohm);
}
