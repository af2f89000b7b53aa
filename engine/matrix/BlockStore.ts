/** Moments of pairs of wires, kept by the geometry of the pair (see wirePairKey), for one kernel. */
export interface BlockStore {
  get(key: string): Float64Array | undefined;
  set(key: string, block: Float64Array): unknown;
}
