import { segmentCurrents } from "../basis/segmentCurrents.ts";
import type { WireProblem } from "../contract.ts";
import { invert } from "../linalg/invert.ts";
import type { Note } from "../result.ts";
import { screenCorrection } from "../screen/screenCorrection.ts";
import { combineStates } from "./combineStates.ts";
import type { PortStates } from "./portStates.ts";
import { screenInput } from "./screenInput.ts";

export interface ScreenStates {
  /** P × P complex, soil and radials in it [S]. */
  readonly admittance: Float64Array;
  /** P columns of 2·N: coefficients with 1 A into one gap and the others open. */
  readonly opened: Float64Array;
  readonly notes: readonly Note[];
}

/**
 * The soil preview: open-circuit port impedances over perfect ground, corrected by the compensation theorem for the
 * soil and the radials, with the shapes of the currents kept:
 *
 *   Z = Y⁻¹ + dZ,  dZ_mn = ∬ Z_s H_m·H_n dS for 1 A into port m (n), the other ports open.
 */
export function screenStates(problem: WireProblem, states: PortStates): ScreenStates {
  const P = states.ports;
  const N = states.basis.count;
  const open = invert(states.admittance, P);
  const opened = new Float64Array(2 * N * P);
  const currents: Float64Array[] = [];
  for (let p = 0; p < P; p++) {
    const column = new Float64Array(2 * P);
    for (let i = 0; i < P; i++) {
      column[2 * i] = open[2 * (i * P + p)]!;
      column[2 * i + 1] = open[2 * (i * P + p) + 1]!;
    }
    opened.set(combineStates(states.shorted, column, N), 2 * N * p);
    currents.push(segmentCurrents(states.segments, states.basis, opened.subarray(2 * N * p, 2 * N * (p + 1))));
  }
  const correction = screenCorrection(screenInput(problem, states.segments, states.k, currents));
  for (let i = 0; i < open.length; i++) open[i]! += correction[i]!;

  const notes: Note[] = [];
  const bare = problem.screens?.filter((s) => s.count === 0).length ?? 0;
  if (bare > 0)
    notes.push({
      code: "soil-without-radials",
      message:
        "An element stands in soil without radials. The preview's loss then rests on the thickness of the conductor and is only an indication.",
      measured: bare,
    });
  return { admittance: invert(open, P), opened, notes };
}
