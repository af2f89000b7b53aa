import type { Plan } from "../contract.ts";
import type { BandReadout, BandRequest } from "../readouts/PlanReadout.ts";
import { ok, type Result } from "../result.ts";
import { type BandSample, bandSample } from "./bandSample.ts";
import { gainOf } from "./beamField.ts";
import { checkBandRequest } from "./checkBandRequest.ts";

/** Feed impedance and SWR of every fed element, and the beam, at equally spaced frequencies, each one solved. */
export function sweepBand(plan: Plan, request: BandRequest): Result<BandReadout> {
  const checked = checkBandRequest(request);
  if (!checked.ok) return checked;
  const { from_MHz, to_MHz, points, elevation_deg } = request;
  const samples: BandSample[] = [];
  for (let i = 0; i < points; i++) {
    const sample = bandSample(plan, from_MHz + ((to_MHz - from_MHz) * i) / (points - 1), elevation_deg);
    if (!sample.ok) return sample;
    samples.push(sample.value);
  }
  const beams = samples.flatMap(({ beam }) => beam ?? []);
  return ok({
    frequency_MHz: samples.map((sample) => sample.frequency_MHz),
    feeds: samples[0]!.feeds.map(({ elementId }, i) => {
      const own = samples.map((sample) => sample.feeds[i]!);
      return {
        elementId,
        resistance_ohm: own.map((feed) => feed.impedance_ohm.re),
        reactance_ohm: own.map((feed) => feed.impedance_ohm.im),
        swr50: own.map((feed) => feed.swr50),
      };
    }),
    ...(elevation_deg !== undefined && {
      beam: {
        elevation_deg,
        forward_dBi: beams.map(({ ahead, resistance_ohm }) => gainOf(ahead, resistance_ohm)),
        frontToBack_dB: beams.map(({ ahead, behind }) => gainOf(ahead, 1) - gainOf(behind, 1)),
      },
    }),
  });
}
