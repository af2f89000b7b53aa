import { expTable } from "../special/expTable.ts";

/** Below this ψ² the integrals go by their series, whose next terms are ψ⁶/5040 and ψ⁵/840 of 1. */
const SMALL_PSI2 = 4e-4;
const e = new Float64Array(2);

/** sin ψ/ψ, given ψ². */
export function evenPart(psi: number, psi2: number): number {
  return psi2 < SMALL_PSI2 ? 1 - psi2 / 6 + (psi2 * psi2) / 120 : Math.sin(psi) / psi;
}

/** sin ψ/ψ² − cos ψ/ψ, given ψ². */
export function oddPart(psi: number, psi2: number): number {
  return psi2 < SMALL_PSI2 ? psi * (1 / 3 - psi2 / 30) : Math.sin(psi) / psi2 - Math.cos(psi) / psi;
}

/**
 * ∫ I(s) e^{j(phase + 2ψ(u − ½))} ds over a segment with a current that is linear from its start to its end,
 *
 *   L e^{j phase} [ Ī sin ψ/ψ + j ½ΔI (sin ψ/ψ² − cos ψ/ψ) ]
 *
 * @param out      2 numbers, written: Re, Im [A m]
 * @param currents 4 numbers from `at`: Re, Im at the start and at the end [A]
 */
export function linearIntegral(
  out: Float64Array,
  currents: Float64Array,
  at: number,
  length: number,
  phase: number,
  psi: number,
): void {
  const p2 = psi * psi;
  const even = 0.5 * length * evenPart(psi, p2);
  const odd = 0.5 * length * oddPart(psi, p2);
  const ar = currents[at]!;
  const ai = currents[at + 1]!;
  const br = currents[at + 2]!;
  const bi = currents[at + 3]!;
  const re = (ar + br) * even - (bi - ai) * odd;
  const im = (ai + bi) * even + (br - ar) * odd;
  expTable(e, 0, phase);
  out[0] = re * e[0]! - im * e[1]!;
  out[1] = re * e[1]! + im * e[0]!;
}
