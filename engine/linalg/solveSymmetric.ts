import { factorLu } from "./factorLu.ts";
import { factorSymmetric, type SymmetricFactors } from "./factorSymmetric.ts";
import { measureResidual } from "./measureResidual.ts";
import { substituteLu } from "./substituteLu.ts";
import { substituteSymmetric } from "./substituteSymmetric.ts";

export interface LinearSolution {
  /** `columns` blocks of 2·n numbers, re and im interleaved. */
  readonly x: Float64Array;
  /** Largest over the columns of ‖A x − b‖ / (‖A‖ ‖x‖); NaN when the matrix is singular. */
  readonly residual: number;
  readonly method: "ldlt" | "lu";
}

/** Above this residual the factorisation without pivoting is not trusted and pivoted elimination takes its place. */
export const RESIDUAL_LIMIT = 1e-10;

/**
 * Solves A X = B for a complex symmetric A: L D Lᵀ without pivoting first, checked by its residual; pivoted LU when
 * the residual is above `RESIDUAL_LIMIT` or not a number.
 *
 * Accuracy: residual a small multiple of 1e-16 on impedance matrices of thin wires; whatever it is, it is returned.
 *
 * @param matrix 2·n·n numbers, row-major, re and im interleaved; not changed
 * @param rhs `columns` blocks of 2·n numbers; not changed
 * @param factor how it is factored: `keptFactors` takes over what it can from the matrix before
 * @throws RangeError when an array is too short
 */
export function solveSymmetric(
  matrix: Float64Array,
  n: number,
  rhs: Float64Array,
  columns: number,
  factor: (matrix: Float64Array, n: number) => SymmetricFactors = factorSymmetric,
): LinearSolution {
  if (rhs.length < 2 * n * columns)
    throw new RangeError(`solveSymmetric: ${rhs.length} numbers do not hold ${columns} columns of ${n}`);
  const b = rhs.slice(0, 2 * n * columns);
  const x = substituteSymmetric(b.slice(), factor(matrix, n), columns);
  const residual = measureResidual(matrix, n, x, b, columns);
  if (residual <= RESIDUAL_LIMIT) return { x, residual, method: "ldlt" };
  const y = substituteLu(b.slice(), factorLu(matrix, n), columns);
  return { x: y, residual: measureResidual(matrix, n, y, b, columns), method: "lu" };
}
