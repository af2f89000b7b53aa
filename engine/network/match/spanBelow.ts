export interface Span {
  readonly from_MHz: number;
  readonly to_MHz: number;
  readonly width_kHz: number;
  /** The SWR is still within the limit at the end of what was given: the real span is wider. */
  readonly openBelow: boolean;
  readonly openAbove: boolean;
}

/**
 * The stretch of frequencies around `around_MHz` in which a curve stays at or below a limit, its ends by straight lines
 * between points; nothing when it is above the limit there. `around_MHz` must be one of the frequencies.
 */
export function spanBelow(
  frequency_MHz: readonly number[],
  value: readonly number[],
  around_MHz: number,
  limit: number,
): Span | undefined {
  const at = frequency_MHz.indexOf(around_MHz);
  // Limits met to rounding are met.
  const within = (i: number) => value[i]! <= limit * (1 + 1e-9);
  if (at < 0 || !within(at)) return undefined;
  const end = (step: 1 | -1) => {
    let i = at;
    while (i + step >= 0 && i + step < value.length && within(i + step)) i += step;
    const next = i + step;
    if (next < 0 || next >= value.length) return { place: frequency_MHz[i]!, open: true };
    const rise = value[next]! - value[i]!;
    // Over a next point at infinity this is no way at all: the span ends at the last good point.
    const part = Math.max(0, limit - value[i]!) / rise;
    return { place: frequency_MHz[i]! + part * (frequency_MHz[next]! - frequency_MHz[i]!), open: false };
  };
  const low = end(-1);
  const high = end(1);
  return {
    from_MHz: low.place,
    to_MHz: high.place,
    width_kHz: 1000 * (high.place - low.place),
    openBelow: low.open,
    openAbove: high.open,
  };
}
