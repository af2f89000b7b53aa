import type { Complex } from "../../contract.ts";
import { swr } from "../../readouts/swr.ts";
import { cx } from "../cx.ts";
import { toReflection } from "./toReflection.ts";

export interface MismatchReadout {
  readonly reflection: Complex;
  readonly swr: number;
  /** −20 log|Γ|; infinite for a perfect match. */
  readonly returnLoss_dB: number;
  /** −10 log(1 − |Γ|²): what a source of impedance Z₀ delivers less than it could. */
  readonly mismatchLoss_dB: number;
}

/** How far an impedance is from a real reference, in the trade's four ways of saying it [ohm]. */
export function mismatchReadout(impedance_ohm: Complex, reference_ohm: number): MismatchReadout {
  const reflection = toReflection(impedance_ohm, reference_ohm);
  const size = cx.abs(reflection);
  return {
    reflection,
    swr: swr(impedance_ohm.re, impedance_ohm.im, reference_ohm),
    returnLoss_dB: -20 * Math.log10(size),
    mismatchLoss_dB: -10 * Math.log10(1 - size * size),
  };
}
