import type { Segments } from "../wires/Segments.ts";
import type { Basis } from "./Basis.ts";

/**
 * Currents at both ends of every segment, along its tangent, from the coefficients of the basis functions.
 *
 * @param x 2·N coefficients [A]
 * @returns 4·S: Re and Im at the start, Re and Im at the end [A]; linear in between
 */
export function segmentCurrents(segments: Segments, basis: Basis, x: Float64Array): Float64Array {
  const out = new Float64Array(4 * segments.count);
  for (let h = 0; h < basis.halfCount; h++) {
    const at = 4 * basis.halfSegment[h]! + 2 * basis.halfEnd[h]!;
    const n = basis.halfBasis[h]!;
    out[at]! += basis.halfSign[h]! * x[2 * n]!;
    out[at + 1]! += basis.halfSign[h]! * x[2 * n + 1]!;
  }
  return out;
}
