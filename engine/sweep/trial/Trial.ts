import type { Plan } from "../../contract.ts";
import type { Result } from "../../result.ts";
import type { ArraySample, Directions } from "./arraySample.ts";

/** One solve that a trial needs. The wires are cut as at the plan's own frequency. */
export interface TrialAsk {
  readonly plan: Plan;
  readonly frequency_MHz: number;
  readonly directions: Directions;
  /**
   * How many segments the upright of each element is cut into, in plan order (`uprightCuts`): the same all over a chart,
   * which would step wherever they do. Absent: as many as the plan would get by itself.
   */
  readonly uprightSegments?: readonly number[];
}

/** What an ask was answered with; undefined while it was not. */
export type Known = (ask: TrialAsk) => Result<ArraySample> | undefined;

/** What a trial makes of the samples there are. */
export interface TrialStep<R> {
  /** Solves still needed, in the order they are best done. None: the trial is done. */
  readonly asks: readonly TrialAsk[];
  /** What can be shown already; null: nothing yet. It may be worked out only when it is looked at. */
  readonly picture: R | null;
  /** Part of the work done, 0..1, as far as can be told. */
  readonly part: number;
}

/**
 * A trial is a pure function of its request and of what is known, so whoever drives it can stop, go on later, and spread
 * the asks over workers.
 */
export type Trial<R> = (known: Known) => Result<TrialStep<R>>;
