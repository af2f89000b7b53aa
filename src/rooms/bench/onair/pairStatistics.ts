import type { OnAirPair } from "../../../../engine/index.ts";

export interface PairStatistics {
  readonly count: number;
  /** Middle value of forward − reversed. */
  readonly median_dB: number;
  /** Between which the middle half of the differences lies. */
  readonly middleHalf_dB: readonly [number, number];
  /** Sample standard deviation of the differences; null for one pair. */
  readonly deviation_dB: number | null;
  /** Of the median; null for one pair. */
  readonly error_dB: number | null;
}

/** √(π/2): a median of normally spread values is by this less sure than their mean; holds for large counts. */
const medianOverMean = Math.sqrt(Math.PI / 2);

/**
 * Median of the differences of pairs, the range of their middle half, and the median's standard error
 * √(π/2) s/√N, s the sample standard deviation. Readings that each fade with deviation σ give s = √2 σ, and so
 * a mean that is unsure by σ√(2/N). Null for no pairs.
 */
export function pairStatistics(pairs: readonly OnAirPair[]): PairStatistics | null {
  const count = pairs.length;
  if (count === 0) return null;
  const sorted = pairs.map((one) => one.forward_dB - one.reverse_dB).sort((a, b) => a - b);
  const mean = sorted.reduce((sum, d) => sum + d, 0) / count;
  const deviation_dB = count < 2 ? null : Math.sqrt(sorted.reduce((sum, d) => sum + (d - mean) ** 2, 0) / (count - 1));
  return {
    count,
    median_dB: quantile(sorted, 0.5),
    middleHalf_dB: [quantile(sorted, 0.25), quantile(sorted, 0.75)],
    deviation_dB,
    error_dB: deviation_dB === null ? null : (medianOverMean * deviation_dB) / Math.sqrt(count),
  };
}

/** Straight between the sorted values: the 0.5 quantile is the median, of an even count the mean of the middle two. */
function quantile(sorted: readonly number[], part: number): number {
  const at = part * (sorted.length - 1);
  const low = Math.floor(at);
  const value = sorted[low]!;
  return value + (at - low) * ((sorted[low + 1] ?? value) - value);
}

/** A claim needs as many pairs (common practice, no source) … */
export const leastPairs = 20;
/** … and a median that is surer than this [dB]. */
export const mostError_dB = 1.5;

export type PairVerdict = "nothing" | "few" | "wide" | "no-difference" | "proven";

/** What pairs prove: a difference only where there are enough of them, it is sure enough, and it is above twice its error. */
export function pairVerdict(found: PairStatistics | null): PairVerdict {
  if (!found) return "nothing";
  if (found.count < leastPairs || found.error_dB === null) return "few";
  if (found.error_dB > mostError_dB) return "wide";
  return Math.abs(found.median_dB) > 2 * found.error_dB ? "proven" : "no-difference";
}
