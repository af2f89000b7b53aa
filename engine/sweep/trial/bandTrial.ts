import { corePlan } from "../../plan/edits/corePlan.ts";
import { ok, type Result } from "../../result.ts";
import type { ArrayChart } from "./ArrayChart.ts";
import type { BandTrialPicture, Stretches } from "./BandTrialPicture.ts";
import type { BandTrialRequest } from "./BandTrialRequest.ts";
import { chartStep } from "./chartStep.ts";
import { checkBandTrial } from "./checkBandTrial.ts";
import { curvesOf } from "./curvesOf.ts";
import { directionsOf } from "./directionsOf.ts";
import { figuresReader } from "./figuresReader.ts";
import { isPreview } from "./isPreview.ts";
import { lastOf } from "./lastOf.ts";
import { rangeValues } from "./rangeValues.ts";
import type { Trial } from "./Trial.ts";
import { uprightCuts } from "./uprightCuts.ts";
import { zerosBetween } from "./zerosBetween.ts";

export const usuallyGood = { swr: 2, frontToBack_dB: 6, forwardWithin_dB: 0.5 } as const;

/** An array that looks alike both ways has a front-to-back of rounding only [dB]. */
const ALIKE_dB = 1e-6;

/**
 * The figures across a band from few solves, the wires cut as at the plan's own frequency, with the stretches over which
 * each is good and where the beam turns round. Read from a chart of the port matrix and fields (`chartStep`, which states
 * its error); edges of stretches are found on it, between the points.
 *
 * Problems: see `checkBandTrial`.
 */
export function bandTrial(request: BandTrialRequest): Result<Trial<BandTrialPicture>> {
  const checked = checkBandTrial(request);
  if (!checked.ok) return checked;
  const plan = corePlan(checked.value);
  const { good = usuallyGood } = request;
  const frequency_MHz = rangeValues(request.frequency_MHz);
  const directions = directionsOf(request.look);
  const read = figuresReader(request.look, directions);
  const uprightSegments = uprightCuts(plan);
  const chartRequest = {
    axes: [{ from: frequency_MHz[0]!, to: frequency_MHz.at(-1)! }],
    askAt: ([f]: readonly number[]) => ({
      plan,
      frequency_MHz: f!,
      directions,
      ...(uprightSegments && { uprightSegments }),
    }),
    describe: ([f]: readonly number[]) => `${f!.toFixed(3)} MHz`,
  };

  const drawn = lastOf((chart: ArrayChart): Pick<BandTrialPicture, "figures" | "stretches" | "reversals_MHz"> => {
    const at = (f: number) => read(plan.elements, chart.sampleAt([f]));
    const figures = frequency_MHz.map(at);
    const best_dBi = Math.max(...figures.map((one) => one.forward_dBi));
    const margins = {
      // Bounded, for where no power is taken the SWR has no end.
      swr: (f: number) => 1 / at(f).feeds[0]!.swr50 - 1 / good.swr,
      frontToBack: (f: number) => at(f).frontToBack_dB - good.frontToBack_dB,
      forward: (f: number) => at(f).forward_dBi - (best_dBi - good.forwardWithin_dB),
    };
    const all = (f: number) => Math.min(margins.swr(f), margins.frontToBack(f), margins.forward(f));
    return {
      figures: curvesOf(figures),
      stretches: {
        swr: stretches(frequency_MHz, margins.swr),
        frontToBack: stretches(frequency_MHz, margins.frontToBack),
        forward: stretches(frequency_MHz, margins.forward),
        all: stretches(frequency_MHz, all),
      },
      reversals_MHz: zerosBetween(frequency_MHz, (f) => at(f).frontToBack_dB, ALIKE_dB).map((zero) => zero.at),
    };
  });

  return ok((known) => {
    const step = chartStep(chartRequest, known);
    if (!step.ok) return step;
    const { asks, chart, error, part } = step.value;
    return ok({
      asks,
      part,
      picture: chart && { kind: "band", isPreview: isPreview(plan), frequency_MHz, good, ...drawn(chart), error },
    });
  });
}

/** Where a margin is not below zero. */
function stretches(places: readonly number[], margin: (f: number) => number): Stretches {
  const [first, last] = [places[0]!, places.at(-1)!];
  const edges = zerosBetween(places, margin);
  const starts = [
    ...(margin(first) >= 0 ? [first] : []),
    ...edges.filter((edge) => edge.isRising).map((edge) => edge.at),
  ];
  const ends = [...edges.filter((edge) => !edge.isRising).map((edge) => edge.at), ...(margin(last) >= 0 ? [last] : [])];
  return starts.flatMap((from_MHz, i) => (ends[i] === undefined ? [] : [{ from_MHz, to_MHz: ends[i]! }]));
}
