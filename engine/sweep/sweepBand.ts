import type { Plan } from "../contract.ts";
import { feedReadout } from "../readouts/feedReadout.ts";
import type { BandReadout, BandRequest } from "../readouts/PlanReadout.ts";
import { failed, ok, type Result } from "../result.ts";
import { solvePlanProblem } from "../solve/solvePlanProblem.ts";

const MOST_POINTS = 401;

/** Feed impedance and SWR of every fed element at equally spaced frequencies, each one solved. */
export function sweepBand(plan: Plan, request: BandRequest): Result<BandReadout> {
  const { from_MHz, to_MHz, points } = request;
  if (!(from_MHz > 0 && to_MHz > from_MHz))
    return failed({
      code: "band-order",
      where: "band",
      message: `The band runs from ${from_MHz} to ${to_MHz} MHz; the upper edge must lie above the lower.`,
    });
  if (!(Number.isInteger(points) && points >= 2 && points <= MOST_POINTS))
    return failed({
      code: "band-points",
      where: "band",
      message: `${points} points; the limits are 2 and ${MOST_POINTS}.`,
    });
  const frequency_MHz = Array.from({ length: points }, (_, i) => from_MHz + ((to_MHz - from_MHz) * i) / (points - 1));
  const feeds = plan.elements
    .filter((e) => e.base.kind === "fed")
    .map((e) => ({
      elementId: e.id,
      resistance_ohm: [] as number[],
      reactance_ohm: [] as number[],
      swr50: [] as number[],
    }));
  for (const f of frequency_MHz) {
    const result = solvePlanProblem({ ...plan, frequency_MHz: f });
    if (!result.ok) return result;
    feedReadout(result.value.plan, result.value.solved).feeds.forEach((feed, i) => {
      feeds[i]!.resistance_ohm.push(feed.impedance_ohm.re);
      feeds[i]!.reactance_ohm.push(feed.impedance_ohm.im);
      feeds[i]!.swr50.push(feed.swr50);
    });
  }
  return ok({ frequency_MHz, feeds });
}
