import type { FeedPoint } from "./FeedPoint.ts";
import { feedAt } from "./feedAt.ts";

/**
 * How much of its height an element must change for its reactance to move by so much: ΔX/(f dX/df), since a thin
 * element's reactance goes by height × frequency. Negative: shorter.
 *
 * Accuracy: first order, some tenths of it; radials do not shorten with the element, and the slope is of the antenna as
 * coupled. A cut has to be measured.
 * @returns nothing when the band has fewer than two points or the reactance does not rise with frequency
 */
export function retrimFraction(
  feed: readonly FeedPoint[],
  frequency_MHz: number,
  reactance_ohm: number,
): number | undefined {
  if (feed.length < 2) return undefined;
  const step = (feed.at(-1)!.frequency_MHz - feed[0]!.frequency_MHz) / 200;
  const from = Math.max(feed[0]!.frequency_MHz, frequency_MHz - step);
  const to = Math.min(feed.at(-1)!.frequency_MHz, frequency_MHz + step);
  const slope = (feedAt(feed, to).im - feedAt(feed, from).im) / (to - from);
  return slope > 0 ? reactance_ohm / (frequency_MHz * slope) : undefined;
}
