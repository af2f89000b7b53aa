import { type BandReadout, type Complex, type FeedPoint, feedAt } from "../../../engine/index.ts";
import type { BandSpan } from "../../store/bandSpan.ts";

/** The feedpoint of one element over a band, as everything behind it in the room is worked out from. */
export interface BandFeed {
  readonly span: BandSpan;
  readonly design_MHz: number;
  /** The band, edges and design frequency among the points: what a match is judged over. */
  readonly judged: readonly FeedPoint[];
  /** The whole sweep, close enough to draw curves through. */
  readonly drawn: readonly FeedPoint[];
  /** As it was swept. */
  readonly swept: readonly FeedPoint[];
  at(frequency_MHz: number): Complex;
}

const judgedPieces = 32;
const drawnPieces = 128;

/**
 * Cuts what the room needs out of a sweep. Null where the sweep does not hold the element, or not the whole band: it is
 * of an earlier plan, and a newer one is on its way.
 */
export function bandFeed(
  band: BandReadout | null,
  elementId: string | undefined,
  span: BandSpan,
  design_MHz: number,
): BandFeed | null {
  const feed = band?.feeds.find((one) => one.elementId === elementId);
  if (!band || !feed) return null;
  const swept = band.frequency_MHz.map((frequency_MHz, i) => ({
    frequency_MHz,
    impedance_ohm: { re: feed.resistance_ohm[i]!, im: feed.reactance_ohm[i]! },
  }));
  const low = Math.min(span.from_MHz, design_MHz);
  const high = Math.max(span.to_MHz, design_MHz);
  const from = swept[0]?.frequency_MHz ?? Number.NaN;
  const to = swept.at(-1)?.frequency_MHz ?? Number.NaN;
  const rounding = 1e-9 * high;
  if (!(from <= low + rounding && to >= high - rounding)) return null;
  const at = (frequency_MHz: number) => feedAt(swept, frequency_MHz);
  const point = (frequency_MHz: number) => ({ frequency_MHz, impedance_ohm: at(frequency_MHz) });
  const wanted = new Set([...evenly(low, high, judgedPieces), span.from_MHz, span.to_MHz, design_MHz]);
  return {
    span,
    design_MHz,
    judged: [...wanted].sort((a, b) => a - b).map(point),
    drawn: evenly(from, to, drawnPieces).map(point),
    swept,
    at,
  };
}

const evenly = (from: number, to: number, pieces: number) =>
  Array.from({ length: pieces + 1 }, (_, i) => (i === pieces ? to : from + ((to - from) * i) / pieces));
