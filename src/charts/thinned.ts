import type { Spot } from "./tracePath.ts";

/** At most about `most` of the points, ends kept: enough to tell whether a label would touch the line. */
export function thinned(points: readonly Spot[], most: number): readonly Spot[] {
  const step = Math.ceil(points.length / most);
  if (step <= 1) return points;
  const kept = points.filter((_, i) => i % step === 0);
  const end = points.at(-1)!;
  if (kept.at(-1) !== end) kept.push(end);
  return kept;
}
