import type { Sides } from "./breed.ts";

/** The first step is this part of each variable's range, the last one that is tried this much smaller. */
const FIRST = 0.1;
const LAST = 1e-5;

/**
 * Walks uphill within a box: a step either way in each variable, taken where it is better, halved where none is (compass
 * search). Never ends lower than it starts.
 *
 * Source: R. Hooke and T. A. Jeeves, Journal of the ACM 8 (1961) 212-229; T. G. Kolda et al., SIAM Review 45 (2003) 385-482.
 *
 * @param height to be made large; −Infinity where a place breaks the rules
 * @param start within the bounds
 */
export function climb(height: (at: readonly number[]) => number, start: readonly number[], bounds: Sides): number[] {
  let at = [...start];
  let best = height(at);
  for (let step = FIRST; step > LAST; ) {
    let isMoved = false;
    for (let v = 0; v < at.length; v++)
      for (const way of [1, -1]) {
        const [least, most] = [bounds.least[v]!, bounds.most[v]!];
        const x = Math.min(most, Math.max(least, at[v]! + way * step * (most - least)));
        if (x === at[v]) continue;
        const there = at.with(v, x);
        const found = height(there);
        if (!(found > best)) continue;
        at = there;
        best = found;
        isMoved = true;
      }
    if (!isMoved) step /= 2;
  }
  return at;
}
