import type { Complex, PlanReadout, PlanReversal } from "../../../../engine/index.ts";

/** A base reactance that was tried, and what the engine made of it. */
export interface Tried {
  readonly reactance_ohm: number;
  readonly readout: PlanReadout;
}

/** From a capacitor to a large coil; an element without a load is among them. */
const coarse_ohm = [-30, -15, 0, 15, 30, 45, 60, 75, 90] as const;
/** Then about the best so far, closer each time; the last step is finer than a coil is wound. */
const finer_ohm = [[5, 10], [2.5], [1.25]] as const;

export const searched_ohm = { least: coarse_ohm[0], most: coarse_ohm.at(-1)! } as const;

/** How well a try meets the goal; more is better. */
export function scoreOf({ readout }: Tried, goal: PlanReversal["goal"], target: Complex | null): number {
  if (goal === "front-to-back" || !target) return readout.path.frontToBack_dB;
  const own = readout.baseCurrents[1]!.current;
  return -Math.hypot(own.re - target.re, own.im - target.im);
}

/**
 * The base reactance of the element behind that meets a goal best: a coarse row of tries, then three finer ones about
 * the best. `tryOut` gives null for what is not known yet, having noted that it is wanted; the search then stops there.
 *
 * The step at the end is 1.25 ohm. A goal with several peaks closer than 15 ohm could be missed; front-to-back over a
 * load has one.
 */
export function searchLoad(
  goal: PlanReversal["goal"],
  target: Complex | null,
  tryOut: (reactance_ohm: number) => PlanReadout | null,
): { readonly tried: readonly Tried[]; readonly best: Tried | null } {
  const tried: Tried[] = [];
  const bestSoFar = () =>
    tried.reduce<Tried | null>(
      (best, one) => (!best || scoreOf(one, goal, target) > scoreOf(best, goal, target) ? one : best),
      null,
    );
  const row = (reactances: readonly number[]): boolean => {
    let isComplete = true;
    for (const reactance_ohm of reactances) {
      const readout = tryOut(reactance_ohm);
      if (readout) tried.push({ reactance_ohm, readout });
      else isComplete = false;
    }
    return isComplete;
  };
  if (!row(coarse_ohm)) return { tried: inOrder(tried), best: null };
  for (const steps of finer_ohm) {
    const around = bestSoFar()!.reactance_ohm;
    if (!row(steps.flatMap((step) => [around - step, around + step]))) return { tried: inOrder(tried), best: null };
  }
  return { tried: inOrder(tried), best: bestSoFar() };
}

const inOrder = (tried: readonly Tried[]) => [...tried].sort((a, b) => a.reactance_ohm - b.reactance_ohm);
