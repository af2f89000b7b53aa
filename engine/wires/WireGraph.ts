/** Wires of a problem joined at their ends. Arrays over wires unless said otherwise. */
export interface WireGraph {
  /** 2·W: node at the start and at the end of each wire. */
  readonly endNode: Int32Array;
  readonly nodeCount: number;
  /** Position of each node, 3 numbers a node [m]. */
  readonly nodeAt: Float64Array;
  /** Per node: how many wire ends meet there. */
  readonly degree: Int32Array;
  /** Per node: 1 where it touches a ground plane that images the current. */
  readonly grounded: Uint8Array;
}
