import type { BestFigures } from "./BestPicture.ts";
import type { BestWeights } from "./BestRequest.ts";

/** Figures in the order they are traded in, with the weight each goes by and its sign: 1 more is better, −1 less is. */
const TRADED = [
  ["forward_dBi", "forward", 1],
  ["frontToBack_dB", "back", 1],
  ["frontToRear_dB", "rear", 1],
  ["swr", "swr", -1],
] as const;

/** A figure beyond this is taken as this: a null or a reflection without end may not outweigh everything. */
const MOST = 100;

const tame = (value: number) => (Number.isNaN(value) ? Number.NaN : Math.min(MOST, Math.max(-MOST, value)));

/** Which figures count. */
export function tradedBy(weights: BestWeights): readonly (keyof BestFigures)[] {
  return TRADED.flatMap(([figure, weight]) => (weights[weight] > 0 ? [figure] : []));
}

/** What has to become small for those that count to become better. */
export function costsOf(figures: BestFigures, traded: readonly (keyof BestFigures)[]): number[] {
  return TRADED.flatMap(([figure, , sign]) => (traded.includes(figure) ? [-sign * tame(figures[figure])] : []));
}

/** Σ weight × figure, the SWR as what it exceeds 1 by, taken off; more is better. */
export function scoreOf(figures: BestFigures, weights: BestWeights): number {
  return TRADED.reduce((sum, [figure, weight, sign]) => {
    const value = tame(figures[figure]) - (figure === "swr" ? 1 : 0);
    // A weight of 0 leaves out even what is not a number.
    return weights[weight] > 0 ? sum + sign * weights[weight] * value : sum;
  }, 0);
}
