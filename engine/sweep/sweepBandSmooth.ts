import type { Plan } from "../contract.ts";
import type { BandReadout, BandRequest } from "../readouts/PlanReadout.ts";
import { ok, type Result } from "../result.ts";
import { type BandSample, bandSample } from "./bandSample.ts";
import { checkBandRequest } from "./checkBandRequest.ts";
import { smoothSweepStep } from "./smoothSweepStep.ts";

/** Feed impedance, SWR and the beam across a band from few solves, where each is dear; `interpolated` states the error. */
export function sweepBandSmooth(plan: Plan, request: BandRequest): Result<BandReadout> {
  const checked = checkBandRequest(request);
  if (!checked.ok) return checked;
  const samples: BandSample[] = [];
  for (;;) {
    const step = smoothSweepStep(request, samples);
    if (step.kind === "done") return ok(step.band);
    const sample = bandSample(plan, step.frequency_MHz, request.elevation_deg);
    if (!sample.ok) return sample;
    samples.push(sample.value);
  }
}
