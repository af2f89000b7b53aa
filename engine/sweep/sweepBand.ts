import type { Plan } from "../contract.ts";
import type { BandReadout, BandRequest } from "../readouts/PlanReadout.ts";
import { ok, type Result } from "../result.ts";
import { checkBandRequest } from "./checkBandRequest.ts";
import { feedsAt } from "./feedsAt.ts";

/** Feed impedance and SWR of every fed element at equally spaced frequencies, each one solved. */
export function sweepBand(plan: Plan, request: BandRequest): Result<BandReadout> {
  const checked = checkBandRequest(request);
  if (!checked.ok) return checked;
  const { from_MHz, to_MHz, points } = request;
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
    const solved = feedsAt(plan, f);
    if (!solved.ok) return solved;
    solved.value.forEach((feed, i) => {
      feeds[i]!.resistance_ohm.push(feed.impedance_ohm.re);
      feeds[i]!.reactance_ohm.push(feed.impedance_ohm.im);
      feeds[i]!.swr50.push(feed.swr50);
    });
  }
  return ok({ frequency_MHz, feeds });
}
