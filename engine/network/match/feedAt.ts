import type { Complex } from "../../contract.ts";
import { curveThrough } from "../../sweep/curveThrough.ts";
import type { FeedPoint } from "./FeedPoint.ts";

/**
 * Feed impedance between the points of a band: the cubic through the four nearest (fewer where there are fewer) [ohm].
 * At a point it is the point. Beyond the band it runs on, and soon means nothing.
 */
export function feedAt(feed: readonly FeedPoint[], frequency_MHz: number): Complex {
  const after = feed.findIndex((p) => p.frequency_MHz > frequency_MHz);
  const from = Math.max(0, Math.min((after < 0 ? feed.length : after) - 2, feed.length - 4));
  const near = feed.slice(from, from + 4);
  return curveThrough(near.map((p) => ({ at: p.frequency_MHz, ...p.impedance_ohm })))(frequency_MHz);
}
