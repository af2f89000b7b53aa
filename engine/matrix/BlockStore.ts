/** Impedances between the nodes of pairs of wires (see nodeBlock), kept by the geometry of the pair, for one kernel and frequency. */
export interface BlockStore {
  get(key: string): Float64Array | undefined;
  set(key: string, block: Float64Array): unknown;
}
