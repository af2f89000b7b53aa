import type { Candidate } from "./Candidate.ts";
import { isBetter } from "./isBetter.ts";

/**
 * Sorts candidates into fronts: the first is bettered by none, the next only by the first, and so on; as indices, in the
 * order given within each. N² comparisons.
 *
 * Source: fast nondominated sort, K. Deb et al., IEEE Transactions on Evolutionary Computation 6 (2002) 182-197.
 */
export function rankFronts(candidates: readonly Candidate[]): number[][] {
  const n = candidates.length;
  const below: number[][] = Array.from({ length: n }, () => []);
  const above = new Int32Array(n);
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      if (isBetter(candidates[i]!, candidates[j]!)) {
        below[i]!.push(j);
        above[j]!++;
      } else if (isBetter(candidates[j]!, candidates[i]!)) {
        below[j]!.push(i);
        above[i]!++;
      }
    }
  const fronts: number[][] = [];
  let front = candidates.flatMap((_, i) => (above[i] === 0 ? [i] : []));
  while (front.length > 0) {
    fronts.push(front);
    const next: number[] = [];
    for (const i of front) for (const j of below[i]!) if (--above[j]! === 0) next.push(j);
    front = next.sort((a, b) => a - b);
  }
  return fronts;
}
