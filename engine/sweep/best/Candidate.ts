/** A point of a search: where it is, what it costs, and how far it breaks the rules. */
export interface Candidate {
  /** One number a variable. */
  readonly at: readonly number[];
  /** To be made small, one an objective. */
  readonly costs: readonly number[];
  /** 0: keeps every rule; above: by how much it breaks them, all together. */
  readonly excess: number;
}
