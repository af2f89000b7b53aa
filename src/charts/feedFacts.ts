import type { FeedSweep } from "./FeedSweep.ts";
import { reference_ohm, swr } from "./swr.ts";

export interface FrequencySpan {
  readonly from_MHz: number;
  readonly to_MHz: number;
}

/** What a sweep says about a feedpoint within a span of frequencies. */
export interface FeedFacts {
  /** Lowest SWR inside the span; null when nothing finite lies there. */
  readonly lowest: { readonly frequency_MHz: number; readonly swr: number } | null;
  /** Every X = 0 inside the span, with R there. */
  readonly resonances: readonly { readonly frequency_MHz: number; readonly resistance_ohm: number }[];
  /** Stretches of the span at or under SWR 2. */
  readonly under2: readonly FrequencySpan[];
}

/** Part of a sweep in which R and X run straight: from t = 0 to t = 1. */
interface Piece {
  readonly f: readonly [number, number];
  readonly r: readonly [number, number];
  readonly x: readonly [number, number];
}

/**
 * Reads lowest SWR, resonances and the stretches under SWR 2 from a sweep. Between samples R and X are taken to run
 * straight (they turn slowly), and on such a piece all three are exact: s + 1/s = (R² + X² + 50²)/(50 R) rises with
 * the SWR, so SWR ≤ 2 is a quadratic in t and the lowest SWR the root of another. The SWR itself does not run
 * straight: near a sharp minimum a line through its samples would miss the bottom.
 */
export function feedFacts(sweep: FeedSweep, span: FrequencySpan): FeedFacts {
  const pieces = cutPieces(sweep, span);
  let lowest: FeedFacts["lowest"] = null;
  const resonances: { frequency_MHz: number; resistance_ohm: number }[] = [];
  const under2: FrequencySpan[] = [];
  for (const p of pieces) {
    for (const t of lowestAt(p)) {
      const s = swr(between(p.r, t), between(p.x, t));
      if (Number.isFinite(s) && (!lowest || s < lowest.swr)) lowest = { frequency_MHz: between(p.f, t), swr: s };
    }
    if (p.x[0] * p.x[1] <= 0) {
      const t = p.x[0] === p.x[1] ? 0 : p.x[0] / (p.x[0] - p.x[1]);
      const frequency_MHz = between(p.f, t);
      // A zero exactly on a sample ends one piece and begins the next: one resonance.
      if (resonances.at(-1)?.frequency_MHz !== frequency_MHz)
        resonances.push({ frequency_MHz, resistance_ohm: between(p.r, t) });
    }
    for (const [a, b] of insideTwo(p)) join(under2, between(p.f, a), between(p.f, b));
  }
  return { lowest, resonances, under2 };
}

const between = ([a, b]: readonly [number, number], t: number) => a + t * (b - a);

/** The straight pieces that lie in the span, trimmed to it; samples that are not finite leave their pieces out. */
function cutPieces({ frequency_MHz: f, resistance_ohm: r, reactance_ohm: x }: FeedSweep, span: FrequencySpan): Piece[] {
  const pieces: Piece[] = [];
  for (let i = 1; i < f.length; i++) {
    const [f0, f1, r0, r1, x0, x1] = [f[i - 1]!, f[i]!, r[i - 1]!, r[i]!, x[i - 1]!, x[i]!];
    const from = Math.max(f0, span.from_MHz);
    const to = Math.min(f1, span.to_MHz);
    if (!(from < to) || !Number.isFinite(r0 + r1 + x0 + x1)) continue;
    const a = (from - f0) / (f1 - f0);
    const b = (to - f0) / (f1 - f0);
    pieces.push({
      f: [from, to],
      r: [between([r0, r1], a), between([r0, r1], b)],
      x: [between([x0, x1], a), between([x0, x1], b)],
    });
  }
  return pieces;
}

/** Where on a piece the SWR can be lowest: its ends, and where d/dt of (R² + X² + 50²)/R is zero. */
function lowestAt({ r, x }: Piece): number[] {
  const dr = r[1] - r[0];
  const dx = x[1] - x[0];
  // (a t² + b t + c) / (r0 + dr t): the derivative's numerator is a dr t² + 2 a r0 t + (b r0 − c dr).
  const a = dr * dr + dx * dx;
  const b = 2 * (r[0] * dr + x[0] * dx);
  const c = r[0] * r[0] + x[0] * x[0] + reference_ohm * reference_ohm;
  return [0, 1, ...roots(a * dr, 2 * a * r[0], b * r[0] - c * dr).filter((t) => t > 0 && t < 1)];
}

/** The parts of a piece at or under SWR 2: R² + X² + 50² ≤ 2.5 · 50 R. */
function insideTwo({ r, x }: Piece): [number, number][] {
  const dr = r[1] - r[0];
  const dx = x[1] - x[0];
  const k = 2.5 * reference_ohm;
  const a = dr * dr + dx * dx;
  const b = 2 * (r[0] * dr + x[0] * dx) - k * dr;
  const c = r[0] * r[0] + x[0] * x[0] + reference_ohm * reference_ohm - k * r[0];
  if (a === 0 && b === 0) return c <= 0 ? [[0, 1]] : [];
  // a ≥ 0: the quadratic opens upward, so it is at or under zero between its roots.
  const [t0, t1] = roots(a, b, c).toSorted((p, q) => p - q);
  if (t0 === undefined || t1 === undefined) return [];
  const from = Math.max(0, t0);
  const to = Math.min(1, t1);
  return from < to ? [[from, to]] : [];
}

/** Real roots of a t² + b t + c. The second is had from the product of both, which does not cancel. */
function roots(a: number, b: number, c: number): number[] {
  if (a === 0) return b === 0 ? [] : [-c / b];
  const d = b * b - 4 * a * c;
  if (d < 0) return [];
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(d));
  return q === 0 ? [0, 0] : [q / a, c / q];
}

/** Adds a stretch, joined to the one before when they meet at a sample. */
function join(spans: FrequencySpan[], from_MHz: number, to_MHz: number): void {
  const before = spans.at(-1);
  const width = to_MHz - from_MHz;
  if (before && from_MHz - before.to_MHz <= 1e-9 * (1 + width)) spans[spans.length - 1] = { ...before, to_MHz };
  else spans.push({ from_MHz, to_MHz });
}
