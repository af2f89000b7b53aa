import type { Basis } from "../basis/Basis.ts";
import type { Segments } from "../wires/Segments.ts";
import type { Symmetry } from "./Symmetry.ts";

/**
 * An order of the unknowns: those on level wires alone first, as radials are, then those that touch an upright, which is what
 * a drag of a height changes. In this order a factorisation can be taken over as far as the radials go.
 *
 * @returns at each place the unknown that stands there
 */
export function levelFirst(segments: Segments, basis: Basis, symmetry: Symmetry | null): Int32Array {
  const count = symmetry?.count ?? basis.count;
  const isUpright = new Uint8Array(count);
  for (let h = 0; h < basis.halfCount; h++) {
    const n = basis.halfBasis[h]!;
    const unknown = symmetry ? symmetry.classOf[n]! : n;
    if (unknown >= 0 && segments.tangent[3 * basis.halfSegment[h]! + 2] !== 0) isUpright[unknown] = 1;
  }
  const order = new Int32Array(count);
  let at = 0;
  for (const wanted of [0, 1]) for (let n = 0; n < count; n++) if (isUpright[n] === wanted) order[at++] = n;
  return order;
}
