import { FEWEST, LONGEST_wl, SHORTEST_wl, toCentimetre } from "./layingsToTry.ts";
import type { RadialLaying } from "./RadialsPicture.ts";

/** One number of radials at a length that the solved ones make look good. */
export interface Guess {
  readonly count: number;
  readonly length_m: number;
  /** Gain ahead that is expected; what it really is a solve has to say. */
  readonly forward_dBi: number;
}

/**
 * From equal fields solved at some lengths, guesses at the best for `share_m` of wire under each element: for each count
 * the longest the wire gives, and the top of a curve before it, if it has one. Best first. Gain runs straight between
 * neighbours in log(length); a top is that of the parabola through three.
 */
export function guessOver(solved: readonly RadialLaying[], share_m: number, wavelength: number): Guess[] {
  const byCount = new Map<number, { x: number; gain: number }[]>();
  for (const { fields, forward_dBi } of solved) {
    const { count, length_m } = fields[0]!;
    if (!byCount.has(count)) byCount.set(count, []);
    byCount.get(count)!.push({ x: Math.log(length_m), gain: forward_dBi });
  }
  const guesses: Guess[] = [];
  for (const [count, points] of byCount) {
    points.sort((a, b) => a.x - b.x);
    const most_m = toCentimetre(Math.min(share_m / count, LONGEST_wl * wavelength));
    if (count < FEWEST || most_m < toCentimetre(SHORTEST_wl * wavelength)) continue;
    guesses.push({ count, length_m: most_m, forward_dBi: between(points, Math.log(most_m)) });
    for (let i = 1; i + 1 < points.length; i++) {
      const top = topOf(points[i - 1]!, points[i]!, points[i + 1]!);
      if (top && top.x < Math.log(most_m))
        guesses.push({ count, length_m: toCentimetre(Math.exp(top.x)), forward_dBi: top.gain });
    }
  }
  return guesses.sort((a, b) => b.forward_dBi - a.forward_dBi);
}

interface Point {
  readonly x: number;
  readonly gain: number;
}

function between(points: readonly Point[], x: number): number {
  const after = points.findIndex((point) => point.x >= x);
  if (after === 0) return points[0]!.gain;
  if (after < 0) return points.at(-1)!.gain;
  const [a, b] = [points[after - 1]!, points[after]!];
  return a.gain + ((b.gain - a.gain) * (x - a.x)) / (b.x - a.x);
}

/** Top of the parabola through three points of which the middle one is highest. */
function topOf(a: Point, b: Point, c: Point): Point | undefined {
  if (!(b.gain > a.gain && b.gain > c.gain)) return undefined;
  const left = (b.gain - a.gain) / (b.x - a.x);
  const right = (c.gain - b.gain) / (c.x - b.x);
  const bend = (right - left) / (c.x - a.x);
  const x = (a.x + b.x) / 2 - left / (2 * bend);
  return { x, gain: a.gain + (x - a.x) * (left + bend * (x - b.x)) };
}
