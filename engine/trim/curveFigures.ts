import type { Complex } from "../contract.ts";
import { swr } from "../readouts/swr.ts";

/** Places a curve is looked at. */
const GRID = 400;
/** Halvings or thirds after that: from 1/400 of a few hundred kHz to below a hertz. */
const ROUNDS = 24;

export interface CurveFigures {
  /** Where X passes through 0 on the way up, nearest to the target, and R there. */
  readonly resonance: { readonly frequency_MHz: number; readonly resistance_ohm: number } | null;
  readonly target_ohm: Complex;
  readonly swr: number;
  readonly leastSwr: number;
  readonly leastSwr_MHz: number;
  /** dX/df at resonance, else at the target [ohm per MHz]. */
  readonly reactanceSlope: number;
}

/** What there is to read off an impedance over frequency. @param z smooth from `from_MHz` to `to_MHz` */
export function curveFigures(
  z: (frequency_MHz: number) => Complex,
  from_MHz: number,
  to_MHz: number,
  target_MHz: number,
): CurveFigures {
  const step = (to_MHz - from_MHz) / GRID;
  const at = Array.from({ length: GRID + 1 }, (_, i) => from_MHz + i * step);
  const swrAt = (f: number) => {
    const { re, im } = z(f);
    return swr(re, im, 50);
  };
  let resonance_MHz: number | null = null;
  let leastSwr_MHz = from_MHz;
  let least = Number.POSITIVE_INFINITY;
  let before = z(from_MHz).im;
  for (const [i, f] of at.entries()) {
    const { re, im } = z(f);
    const ratio = swr(re, im, 50);
    if (ratio < least) {
      least = ratio;
      leastSwr_MHz = f;
    }
    if (i > 0 && before < 0 && im >= 0) {
      const crossing = bisect((x) => z(x).im, at[i - 1]!, f);
      if (resonance_MHz === null || Math.abs(crossing - target_MHz) < Math.abs(resonance_MHz - target_MHz))
        resonance_MHz = crossing;
    }
    before = im;
  }
  leastSwr_MHz = lowest(swrAt, Math.max(from_MHz, leastSwr_MHz - step), Math.min(to_MHz, leastSwr_MHz + step));
  const slopeAt = resonance_MHz ?? target_MHz;
  return {
    resonance: resonance_MHz === null ? null : { frequency_MHz: resonance_MHz, resistance_ohm: z(resonance_MHz).re },
    target_ohm: z(target_MHz),
    swr: swrAt(target_MHz),
    leastSwr: swrAt(leastSwr_MHz),
    leastSwr_MHz,
    reactanceSlope: (z(slopeAt + step).im - z(slopeAt - step).im) / (2 * step),
  };
}

/** Where a function that is below 0 at `low` and not at `high` passes through 0. */
function bisect(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let n = 0; n < ROUNDS; n++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** The lowest place of a function with one valley between two places, by thirds. */
function lowest(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let n = 0; n < 2 * ROUNDS; n++) {
    const [left, right] = [a + (b - a) / 3, b - (b - a) / 3];
    if (f(left) < f(right)) b = right;
    else a = left;
  }
  return (a + b) / 2;
}
