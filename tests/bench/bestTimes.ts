export interface Work {
  readonly name: string;
  run(): unknown;
}

/** A result that the optimiser must believe is used. */
let kept: unknown;

/** Milliseconds of one batch. */
function batch_ms(work: Work, times: number): number {
  const start = performance.now();
  for (let i = 0; i < times; i++) kept = work.run();
  return performance.now() - start;
}

/**
 * Times several pieces of work side by side and returns the milliseconds of one call of each, best of `rounds` batches.
 *
 * The best, because other programs can only make a batch slower. Batches of 20 ms or more, because a browser's clock may
 * step by one. Taken in turn, so that a slow minute of the machine strikes all alike: ratios are firmer than times.
 */
export function bestTimes_ms(works: readonly Work[], rounds = 7): number[] {
  const times = works.map((work) => {
    // Warm up and find the batch at once.
    let n = 1;
    for (let taken = batch_ms(work, n); taken < 20; taken = batch_ms(work, n))
      n = Math.ceil(n * Math.max(2, 25 / Math.max(taken, 1)));
    return n;
  });
  const best = works.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < rounds; round++)
    for (const [i, work] of works.entries()) best[i] = Math.min(best[i]!, batch_ms(work, times[i]!) / times[i]!);
  if (kept === bestTimes_ms) throw new Error("bestTimes_ms: a work returned the stopwatch");
  return best;
}
