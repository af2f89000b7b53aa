import type { Basis } from "../basis/Basis.ts";
import type { Segments } from "../wires/Segments.ts";
import type { Symmetry } from "./Symmetry.ts";

/**
 * Which unknowns the current at each node of each wire is made of, I_i = Σ factor · x. Of a node inside a wire it is one; of
 * an end as many as the junction has functions through it, of a free end none. Entries are listed wire by wire.
 */
export interface NodeUnknowns {
  /** Entries of wire w are firstOfWire[w] … firstOfWire[w + 1] − 1. */
  readonly firstOfWire: Int32Array;
  /** Per entry: node, counted along its wire from 0. */
  readonly node: Int32Array;
  /** Per entry: basis function, or class where there is a symmetry. */
  readonly unknown: Int32Array;
  /** Per entry: sign of the current along the wire, times the class's weight. */
  readonly factor: Float64Array;
}

/**
 * @param basis as buildBasis makes it: a current at a node inside a wire goes on unchanged
 * @param order at each place the unknown that is to stand there; absent: as they are numbered
 */
export function nodeUnknowns(
  segments: Segments,
  basis: Basis,
  symmetry?: Symmetry | null,
  order?: Int32Array,
): NodeUnknowns {
  const place = order && new Int32Array(order.length);
  if (place) for (let i = 0; i < place.length; i++) place[order[i]!] = i;
  const wires = segments.firstOfWire.length - 1;
  const { halvesOf, firstHalf, halfBasis, halfEnd, halfSign } = basis;
  const firstOfWire = new Int32Array(wires + 1);
  const node = new Int32Array(basis.halfCount);
  const unknown = new Int32Array(basis.halfCount);
  const factor = new Float64Array(basis.halfCount);
  let count = 0;
  for (let w = 0; w < wires; w++) {
    const s0 = segments.firstOfWire[w]!;
    const s1 = segments.firstOfWire[w + 1]!;
    for (let s = s0; s < s1; s++)
      for (let i = firstHalf[s]!; i < firstHalf[s + 1]!; i++) {
        const h = halvesOf[i]!;
        const end = halfEnd[h]!;
        // Of the two halves about a node inside the wire the one before it is listed.
        if (end === 0 && s > s0) continue;
        const n = halfBasis[h]!;
        const own = symmetry ? symmetry.classOf[n]! : n;
        if (own < 0) continue;
        node[count] = s - s0 + end;
        unknown[count] = place ? place[own]! : own;
        factor[count++] = halfSign[h]! * (symmetry ? symmetry.weight[n]! : 1);
      }
    firstOfWire[w + 1] = count;
  }
  return { firstOfWire, node, unknown, factor };
}
