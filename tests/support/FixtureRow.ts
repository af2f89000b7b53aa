type Pair = { readonly re: number; readonly im: number };

/** A check value from outside the project; `provenance` "read" = seen at the source, "memory" = not, "computed" = not published. */
export interface FixtureRow {
  readonly id: string;
  readonly conditions: Readonly<Record<string, unknown>>;
  readonly quantity: string;
  readonly value: number | Pair | readonly number[];
  readonly tolerance: Readonly<Record<string, number | readonly number[]>>;
  readonly source: string;
  readonly provenance: string;
}
