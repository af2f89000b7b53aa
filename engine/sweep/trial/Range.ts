/** Equally spaced values, both ends among them. */
export interface Range {
  readonly from: number;
  readonly to: number;
  /** How many, 2 and more. */
  readonly points: number;
}
