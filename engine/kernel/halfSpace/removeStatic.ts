import { expTable } from "../../special/expTable.ts";
import type { Placement } from "./Placement.ts";

const phase = new Float64Array(2);

/**
 * Turns the integrals I_k at one point into S_k e^{+jk0 R}: takes the static part A_k g out and the phase of the direct
 * path through air off. In place.
 *
 * @param values  8 numbers from `at` on: Re, Im of I1..I4, replaced
 * @param A       from `staticPart`
 */
export function removeStatic(
  values: Float64Array,
  at: number,
  place: Placement,
  A: Float64Array,
  rho: number,
  zeta: number,
): void {
  const k0 = place.halfSpace.k0;
  const R = Math.sqrt(rho * rho + zeta * zeta);
  expTable(phase, 0, k0 * R);
  const er = phase[0]!;
  const ei = phase[1]!;
  // g e^{+jk0 R}
  let gr = 1 / R;
  let gi = 0;
  if (place.kind === "soil") {
    const size = Math.exp(place.kIm * R) / R;
    const turn = (place.kRe - k0) * R;
    gr = size * Math.cos(turn);
    gi = -size * Math.sin(turn);
  }
  const angle = rho / (R + zeta);
  for (let k = 0; k < 8; k += 2) {
    const f = k === 4 ? angle : 1;
    const re = values[at + k]!;
    const im = values[at + k + 1]!;
    values[at + k] = re * er - im * ei - f * (A[k]! * gr - A[k + 1]! * gi);
    values[at + k + 1] = re * ei + im * er - f * (A[k]! * gi + A[k + 1]! * gr);
  }
}
