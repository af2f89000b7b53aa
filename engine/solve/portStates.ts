import type { Basis } from "../basis/Basis.ts";
import { buildBasis } from "../basis/buildBasis.ts";
import { portVectors } from "../basis/portVectors.ts";
import { C0_mPerS } from "../constants.ts";
import type { PortInput, WireInput, WireProblem } from "../contract.ts";
import { freeSpaceKernel } from "../kernel/freeSpaceKernel.ts";
import { perfectGroundKernel } from "../kernel/perfectGroundKernel.ts";
import { solveSymmetric } from "../linalg/solveSymmetric.ts";
import { fillMatrix } from "../matrix/fillMatrix.ts";
import { joinWires } from "../wires/joinWires.ts";
import type { Segments } from "../wires/Segments.ts";
import { segmentWires } from "../wires/segmentWires.ts";

/** Up to this many wires, looking for pairs of one geometry costs more than it saves. */
const FEW_WIRES = 6;

/** Everything about a set of wires and its gaps that does not depend on what is connected to the gaps. */
export interface PortStates {
  readonly segments: Segments;
  readonly basis: Basis;
  /** Wavenumber [rad/m]. */
  readonly k: number;
  readonly ports: number;
  /** P columns of 2·N: coefficients with 1 V in one gap and the others shorted [A]. */
  readonly shorted: Float64Array;
  /** P × P complex, symmetric [S]. */
  readonly admittance: Float64Array;
  /** Residual of the linear solution. */
  readonly residual: number;
  /** Smallest average segment length of a run of wire, in radii. */
  readonly shortest_radii: number;
}

/**
 * Solves the wires once for every gap: Z x = p for each port vector p, and Y = pᵀ x.
 * Over soil ("screen") and perfect ground the currents are those over a perfect ground.
 */
export function portStates(problem: WireProblem, wires: readonly WireInput[], ports: readonly PortInput[]): PortStates {
  const { frequency_Hz, ground } = problem;
  const k = (2 * Math.PI * frequency_Hz) / C0_mPerS;
  const plane = ground.kind !== "free-space";
  const graph = joinWires(wires, plane);
  const { segments, portEnd, shortest_radii } = segmentWires(
    wires,
    ports,
    graph,
    frequency_Hz,
    C0_mPerS / frequency_Hz,
  );
  const basis = buildBasis(segments);
  const N = basis.count;
  const kernel = plane ? perfectGroundKernel(k) : freeSpaceKernel(k);
  // Radials make many pairs of wires of one geometry.
  const store = wires.length > FEW_WIRES ? new Map<string, Float64Array>() : undefined;
  const Z = fillMatrix(segments, basis, frequency_Hz, kernel, store);
  const p = portVectors(segments, basis, portEnd);
  const P = ports.length;
  const { x, residual } = solveSymmetric(Z, N, p, P);

  const admittance = new Float64Array(2 * P * P);
  for (let i = 0; i < P; i++)
    for (let j = 0; j <= i; j++) {
      let re = 0;
      let im = 0;
      for (let n = 0; n < N; n++) {
        const w = p[2 * (i * N + n)]!;
        if (w === 0) continue;
        re += w * x[2 * (j * N + n)]!;
        im += w * x[2 * (j * N + n) + 1]!;
      }
      admittance[2 * (i * P + j)] = admittance[2 * (j * P + i)] = re;
      admittance[2 * (i * P + j) + 1] = admittance[2 * (j * P + i) + 1] = im;
    }
  return { segments, basis, k, ports: P, shorted: x, admittance, residual, shortest_radii };
}
