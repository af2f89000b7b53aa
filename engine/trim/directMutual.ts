import type { Complex } from "../contract.ts";
import { cx } from "../network/cx.ts";

/**
 * Mutual impedance from three readings at one frequency, Z₁₂ = ±√(Z₂₂ (Z₁₁ − Z₁)): driven alone, reflector alone (with
 * whatever load it carries when joined added), and driven with the reflector joined. Of the two roots the one nearer to
 * what is expected.
 *
 * Accuracy: exact for exact readings; errors of the readings are carried as δZ₁₂ ≈ |Z₂₂| δ(Z₁₁ − Z₁)/(2|Z₁₂|), about
 * δ itself for a pair a fifth of a wavelength apart. Source: Z₁ = Z₁₁ − Z₁₂²/Z₂₂, any text on coupled circuits.
 */
export function directMutual(
  drivenAlone_ohm: Complex,
  reflectorAlone_ohm: Complex,
  joined_ohm: Complex,
  expected_ohm: Complex,
): Complex {
  const square = cx.mul(reflectorAlone_ohm, cx.sub(drivenAlone_ohm, joined_ohm));
  const root = cx.polar(Math.sqrt(cx.abs(square)), cx.arg(square) / 2);
  return cx.dot(root, expected_ohm) >= 0 ? root : cx.neg(root);
}
