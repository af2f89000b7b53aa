import type { Basis } from "../basis/Basis.ts";
import { buildBasis } from "../basis/buildBasis.ts";
import { portVectors } from "../basis/portVectors.ts";
import { C0_mPerS } from "../constants.ts";
import type { PortInput, WireInput, WireProblem } from "../contract.ts";
import { surroundings } from "../kernel/surroundings.ts";
import { keptFactors } from "../linalg/keptFactors.ts";
import { reorderColumns } from "../linalg/reorderColumns.ts";
import { type LinearSolution, solveSymmetric } from "../linalg/solveSymmetric.ts";
import { fillMatrix } from "../matrix/fillMatrix.ts";
import { findSymmetry } from "../matrix/findSymmetry.ts";
import { levelFirst } from "../matrix/levelFirst.ts";
import { fromClasses, toClasses } from "../matrix/symmetryClasses.ts";
import { imagesCurrents } from "../wires/imagesCurrents.ts";
import { joinWires } from "../wires/joinWires.ts";
import type { Segments } from "../wires/Segments.ts";
import { segmentWires } from "../wires/segmentWires.ts";
import { soilAround } from "../wires/soilAround.ts";
import { reach } from "./reach.ts";

/** The part of a large problem's time that goes into its matrix; most of the rest is the elimination. */
const FILL = 0.6;

/** From this many unknowns on it pays to look for what can be taken over from the solution before. */
const MANY = 48;

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
 * Solves the wires once for every gap: Z x = p for each port vector p, and Y = pᵀ x. Where wires and ports have a symmetry,
 * for the currents that have it too, which are all that the ports drive.
 *
 * @param onPart told now and then which part of the work is done, 0..1
 * In the soil preview ("screen") the currents are those over a perfect ground.
 */
export function portStates(
  problem: WireProblem,
  wires: readonly WireInput[],
  ports: readonly PortInput[],
  onPart?: (part: number) => void,
): PortStates {
  const { frequency_Hz } = problem;
  const k = (2 * Math.PI * frequency_Hz) / C0_mPerS;
  const graph = joinWires(wires, imagesCurrents(problem));
  const { segments, portEnd, shortest_radii } = segmentWires(
    wires,
    ports,
    graph,
    frequency_Hz,
    C0_mPerS / frequency_Hz,
    soilAround(problem),
  );
  const basis = buildBasis(segments);
  const { kernel, panels, store } = surroundings(problem, reach(segments));
  const p = portVectors(basis, portEnd);
  const P = ports.length;
  const symmetry = findSymmetry(segments, basis, p, portEnd);
  const count = symmetry?.count ?? basis.count;
  const order = count < MANY ? undefined : levelFirst(segments, basis, symmetry);
  const Z = fillMatrix(segments, basis, frequency_Hz, kernel, {
    store,
    symmetry,
    order,
    panels,
    onPart: onPart && ((part) => onPart(FILL * part)),
  });
  onPart?.(FILL);
  const rhs = symmetry ? toClasses(p, P, symmetry) : p;
  const solved = order ? solveKept(Z, count, rhs, P, order) : solveSymmetric(Z, count, rhs, P);
  const x = symmetry ? fromClasses(solved.x, P, symmetry) : solved.x;
  const { residual } = solved;
  const N = basis.count;

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

/**
 * As `solveSymmetric`, of a matrix whose unknowns stand in `order`, by factors that are taken over from the solution before as far
 * as the first of them are alike.
 */
function solveKept(Z: Float64Array, n: number, rhs: Float64Array, columns: number, order: Int32Array): LinearSolution {
  const solved = solveSymmetric(Z, n, reorderColumns(rhs, n, order), columns, keptFactors);
  return { ...solved, x: reorderColumns(solved.x, n, order, true) };
}
