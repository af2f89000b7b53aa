import { factorSymmetric, type SymmetricFactors } from "./factorSymmetric.ts";
import { refactorSymmetric } from "./refactorSymmetric.ts";

/** Two arrays of this many squared complex numbers are 46 MB. */
const MOST = 1200;

let last: { readonly matrix: Float64Array; readonly factors: SymmetricFactors } | null = null;

/**
 * Factors of a complex symmetric matrix as by `factorSymmetric`, made from those of the matrix before it where the first half
 * or more of the rows is the same, number by number: of a plan that changes in one upright, unknowns on its radials first.
 *
 * @param matrix 2·n·n numbers; kept for the next call, so never to be changed
 */
export function keptFactors(matrix: Float64Array, n: number): SymmetricFactors {
  const kept = last ? sameRows(last.matrix, last.factors.n, matrix, n) : 0;
  const factors = last && 2 * kept >= n ? refactorSymmetric(matrix, n, last.factors, kept) : factorSymmetric(matrix, n);
  last = n <= MOST ? { matrix, factors } : null;
  return factors;
}

/** How many rows and columns from the first on two symmetric matrices share; the lower triangles are read. */
function sameRows(a: Float64Array, m: number, b: Float64Array, n: number): number {
  const most = Math.min(m, n);
  for (let i = 0; i < most; i++)
    for (let j = 0, p = 2 * i * m, q = 2 * i * n; j < 2 * (i + 1); j++, p++, q++) if (a[p] !== b[q]) return i;
  return most;
}
