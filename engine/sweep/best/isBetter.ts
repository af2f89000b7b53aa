import type { Candidate } from "./Candidate.ts";

/**
 * Whether `a` dominates `b`: it keeps the rules and `b` does not, or breaks them less; or both keep them, and `a` costs no
 * more in anything and less in something. (Constrained domination: K. Deb et al., IEEE Transactions on Evolutionary
 * Computation 6 (2002) 182-197, section VI.)
 */
export function isBetter(a: Candidate, b: Candidate): boolean {
  if (a.excess > 0 || b.excess > 0) return a.excess < b.excess;
  let isLess = false;
  for (let i = 0; i < a.costs.length; i++) {
    if (a.costs[i]! > b.costs[i]!) return false;
    isLess ||= a.costs[i]! < b.costs[i]!;
  }
  return isLess;
}
