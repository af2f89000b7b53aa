import type { Basis } from "./Basis.ts";

/**
 * How much of each basis function's current passes each gap, counted into the wire: P columns of N complex numbers.
 *
 * The same vector excites the port (a voltage V in the gap puts V·p on the right-hand side) and reads its current
 * (I = pᵀx), which is what makes the port admittance matrix symmetric.
 *
 * @param portEnd per port: 2·segment + end at whose node the gap lies
 */
export function portVectors(basis: Basis, portEnd: Int32Array): Float64Array {
  const N = basis.count;
  const out = new Float64Array(2 * N * portEnd.length);
  portEnd.forEach((segmentEnd, p) => {
    const s = segmentEnd >> 1;
    const end = segmentEnd & 1;
    for (let i = basis.firstHalf[s]!; i < basis.firstHalf[s + 1]!; i++) {
      const h = basis.halvesOf[i]!;
      if (basis.halfEnd[h] !== end) continue;
      // Into the wire is along the tangent at its start and against it at its end.
      out[2 * (p * N + basis.halfBasis[h]!)]! += basis.halfSign[h]! * (end === 0 ? 1 : -1);
    }
  });
  return out;
}
