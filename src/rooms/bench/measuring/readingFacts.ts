import { type BenchReading, swr } from "../../../../engine/index.ts";
import type { FeedSweep } from "../../../charts/FeedSweep.ts";
import { feedFacts } from "../../../charts/feedFacts.ts";
import { readSweep } from "../../../charts/readSweep.ts";

/** What a reading shows of what a step expects; null where its points do not say. */
export interface ReadingFacts {
  readonly resonance_MHz: number | null;
  readonly resonanceResistance_ohm: number | null;
  readonly resistance_ohm: number | null;
  readonly reactance_ohm: number | null;
  readonly swr: number | null;
  /** Only where the least lies between points: at the end of a sweep it may go on falling. */
  readonly leastSwr: number | null;
  readonly leastSwr_MHz: number | null;
}

/** The points of a reading as a sweep: by rising frequency, the last taken where two are of one frequency. */
export function sweepOf({ points }: Pick<BenchReading, "points">): FeedSweep {
  const byFrequency = new Map(points.map((point) => [point.frequency_MHz, point]));
  const sorted = [...byFrequency.values()].sort((a, b) => a.frequency_MHz - b.frequency_MHz);
  return {
    frequency_MHz: sorted.map((point) => point.frequency_MHz),
    resistance_ohm: sorted.map((point) => point.resistance_ohm),
    reactance_ohm: sorted.map((point) => point.reactance_ohm),
  };
}

/** Reads a reading's points at the plan's frequency and where X passes through 0, straight between neighbours. */
export function readingFacts(reading: Pick<BenchReading, "points">, frequency_MHz: number): ReadingFacts {
  const sweep = sweepOf(reading);
  const f = sweep.frequency_MHz;
  const z = readSweep(sweep, frequency_MHz);
  const isThere = Number.isFinite(z.resistance_ohm);
  const { lowest, resonances } = feedFacts(sweep, { from_MHz: f[0] ?? 0, to_MHz: f.at(-1) ?? 0 });
  const near = resonances.toSorted(
    (a, b) => Math.abs(a.frequency_MHz - frequency_MHz) - Math.abs(b.frequency_MHz - frequency_MHz),
  )[0];
  // One point that was read where X is 0 is a resonance too, though no line passes through it.
  const i = sweep.reactance_ohm.indexOf(0);
  const resonance = near ?? (i < 0 ? undefined : { frequency_MHz: f[i]!, resistance_ohm: sweep.resistance_ohm[i]! });
  const isInside = lowest !== null && lowest.frequency_MHz > f[0]! && lowest.frequency_MHz < f.at(-1)!;
  return {
    resonance_MHz: resonance?.frequency_MHz ?? null,
    resonanceResistance_ohm: resonance?.resistance_ohm ?? null,
    resistance_ohm: isThere ? z.resistance_ohm : null,
    reactance_ohm: isThere ? z.reactance_ohm : null,
    swr: isThere ? swr(z.resistance_ohm, z.reactance_ohm, 50) : null,
    leastSwr: isInside ? lowest.swr : null,
    leastSwr_MHz: isInside ? lowest.frequency_MHz : null,
  };
}
