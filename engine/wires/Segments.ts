/**
 * Straight pieces of wire, structure of arrays; S segments. SI units.
 * Point u in 0..1 of segment s is start + u · length · tangent.
 */
export interface Segments {
  readonly count: number;
  /** 3·S: starts x, y, z [m]. */
  readonly start: Float64Array;
  /** 3·S: unit tangents. */
  readonly tangent: Float64Array;
  /** S [m]. */
  readonly length: Float64Array;
  /** S [m]. */
  readonly radius: Float64Array;
  /** S: index of the wire each segment belongs to. */
  readonly wire: Int32Array;
  /** 2·S: node at the start and at the end of each segment. */
  readonly node: Int32Array;
  /** 2·S: internal impedance per metre of the conductor, Re and Im [ohm/m]; 0 for a perfect one. */
  readonly internal_ohmPerM: Float64Array;
  /**
   * 2·S: what a sheath of insulation adds to the scalar kernel K, as the factor of δ(s − s'), Re and Im; 0 where bare
   * (see sheathTerm).
   */
  readonly sheath: Float64Array;
  readonly nodeCount: number;
  /** One flag per node: 1 where the node meets a ground plane at z = 0. */
  readonly grounded: Uint8Array;
  /** For each wire its first segment and one past its last. */
  readonly firstOfWire: Int32Array;
}
