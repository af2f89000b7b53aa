import { factorLu } from "./factorLu.ts";
import { substituteLu } from "./substituteLu.ts";

/**
 * Solves A X = B for a small general complex matrix (port networks, n up to about 20) by pivoted elimination.
 *
 * @param matrix 2·n·n numbers, row-major, re and im interleaved; not changed
 * @param rhs `columns` blocks of 2·n numbers; not changed
 * @returns X in the layout of rhs; not finite where A is singular
 * @throws RangeError when an array is too short
 */
export function solveGeneral(matrix: Float64Array, n: number, rhs: Float64Array, columns: number): Float64Array {
  return substituteLu(rhs.slice(0, 2 * n * columns), factorLu(matrix, n), columns);
}
