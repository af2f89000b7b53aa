import type { Plan } from "../contract.ts";
import type { BandReadout, BandRequest } from "../readouts/PlanReadout.ts";
import { ok, type Result } from "../result.ts";
import { checkBandRequest } from "./checkBandRequest.ts";
import { feedsAt } from "./feedsAt.ts";
import { type SweepSample, smoothSweepStep } from "./smoothSweepStep.ts";

/** Feed impedance and SWR across a band from few solves, where each is dear; `interpolated` states the error. */
export function sweepBandSmooth(plan: Plan, request: BandRequest): Result<BandReadout> {
  const checked = checkBandRequest(request);
  if (!checked.ok) return checked;
  const samples: SweepSample[] = [];
  for (;;) {
    const step = smoothSweepStep(request, samples);
    if (step.kind === "done") return ok(step.band);
    const feeds = feedsAt(plan, step.frequency_MHz);
    if (!feeds.ok) return feeds;
    samples.push({ frequency_MHz: step.frequency_MHz, feeds: feeds.value });
  }
}
