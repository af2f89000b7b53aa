import {
  drivenOf,
  type FeedPoint,
  type Match,
  type Plan,
  retrimFraction,
  withElementHeight,
} from "../../../../engine/index.ts";

export interface Recut {
  readonly from_m: number;
  readonly to_m: number;
}

/**
 * The driven's length that gives a match the reactance it counts on, to a centimetre: h (1 + ΔX/(f dX/df)), a first step.
 * Nothing where the match wants none, where the slope is not known, or where less than a millimetre is to be cut.
 */
export function recutFor(match: Match, plan: Plan, swept: readonly FeedPoint[], frequency_MHz: number): Recut | null {
  const driven = drivenOf(plan);
  const retrim = match.ladder.find((section) => section.kind === "retrim");
  if (!driven || retrim?.kind !== "retrim") return null;
  const fraction = retrimFraction(swept, frequency_MHz, retrim.reactance_ohm);
  if (fraction === undefined || !(fraction > -0.5 && fraction < 0.5)) return null;
  const to_m = Math.round(driven.height_m * (1 + fraction) * 1000) / 1000;
  return Math.abs(to_m - driven.height_m) < 0.001 ? null : { from_m: driven.height_m, to_m };
}

/** The plan with its driven so recut. */
export function recutDriven<P extends Plan>(plan: P, { to_m }: Recut): P {
  const driven = drivenOf(plan);
  return driven ? withElementHeight(plan, driven.id, to_m) : plan;
}
