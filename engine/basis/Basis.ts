/**
 * Shapes the current may take: triangles over two segments that meet at a node, and half triangles at a grounded node
 * (their image carries the other half). N functions.
 *
 *       ___into___ node ___out___          f = 1 at the node, 0 at the far ends,
 *      0 ........... 1 ......... 0         linear in between; current flows into → node → out.
 *
 * A half is one such ramp: segment, end at which it is 1, and sign of the current against the segment's tangent.
 */
export interface Basis {
  readonly count: number;
  readonly halfCount: number;
  /** Per half: basis function it belongs to. */
  readonly halfBasis: Int32Array;
  /** Per half: segment. */
  readonly halfSegment: Int32Array;
  /** Per half: 0 when it is 1 at the segment's start, 1 when at its end. */
  readonly halfEnd: Uint8Array;
  /** Per half: +1 or −1. */
  readonly halfSign: Int8Array;
  /** Halves of segment s are listed at halvesOf[first[s]] … halvesOf[first[s+1] − 1]. */
  readonly halvesOf: Int32Array;
  readonly firstHalf: Int32Array;
}
