/** One quantity that a chart runs over. */
export interface ChartAxis {
  readonly from: number;
  readonly to: number;
  /**
   * Places where the solve jumps: the last value before and the first after. Each piece between is interpolated by
   * itself.
   */
  readonly breaks?: readonly (readonly [before: number, after: number])[];
}

/** A stretch of an axis without a break. */
export interface AxisPiece {
  /** Values it answers for. */
  readonly from: number;
  readonly to: number;
  /** Values between its outermost nodes; beyond them the nearer end answers. */
  readonly low: number;
  readonly high: number;
}

/** A piece shorter than this part of the axis is no piece: its neighbour's end answers. */
const SHORTEST_PART = 1e-3;

/** @throws RangeError when the axis has no length */
export function axisPieces({ from, to, breaks = [] }: ChartAxis): readonly AxisPiece[] {
  if (!(to > from)) throw new RangeError(`axisPieces: from ${from} to ${to}`);
  const inside = breaks.filter(([before, after]) => before > from && after < to);
  const lows = [from, ...inside.map(([, after]) => after)];
  const highs = [...inside.map(([before]) => before), to];
  const long = lows
    .map((low, i) => ({ low, high: highs[i]! }))
    .filter(({ low, high }) => high - low > SHORTEST_PART * (to - from));
  return long.map(({ low, high }, i) => ({
    // What lies between two pieces is like the later one.
    from: long[i - 1]?.high ?? from,
    to: i === long.length - 1 ? to : high,
    low,
    high,
  }));
}

/** A place on a piece, −1..1 between its outermost nodes. */
export function inward({ low, high }: AxisPiece, value: number): number {
  return value <= low ? -1 : value >= high ? 1 : (2 * (value - low)) / (high - low) - 1;
}

/** The value at a place; the ends come out exact. */
export function outward({ low, high }: AxisPiece, t: number): number {
  return t === -1 ? low : t === 1 ? high : low + ((t + 1) / 2) * (high - low);
}
