import { performance } from "node:perf_hooks";
import {
  type ArraySample,
  arraySample,
  askKey,
  type Plan,
  type Result,
  type TrialPicture,
  type TrialRequest,
  trialOf,
  wavelength_m,
  withRadials,
} from "../../engine/index.ts";
import { firstChoices } from "../../src/store/trials/TrialChoices.ts";
import { trialRequest } from "../../src/store/trials/trialRequests.ts";
import type { BenchRow } from "./BenchRow.ts";
import { benchPlan } from "./benchPlan.ts";

interface Driven {
  readonly picture: TrialPicture;
  readonly solves: number;
  readonly total_ms: number;
  /** The longest that a step took beside its solves: what is made of the samples. */
  readonly longestStep_ms: number;
}

/** What is searched for, laid and drawn at random, as the room of trials asks for it on a first visit: in one thread. */
export function searchRows(): BenchRow[] {
  const preview = benchPlan("screen");
  const full = withRadials(benchPlan("full-wave"), { count: 16 });
  const best = quickest(trialRequest("best", preview, preview, firstChoices));
  const tolerance = quickest(trialRequest("tolerance", preview, preview, firstChoices));
  const radials = driven(trialRequest("radials", full, full, firstChoices));
  return [
    {
      name: "find best: the search on the charts",
      measured: best.longestStep_ms,
      goal: 1000,
      unit: "ms",
      remark: `40 generations of 60 and the climbs; with its ${best.solves} solves, preview, ${seconds(best)}`,
    },
    {
      name: "tolerance: 400 designs drawn at random, and their bands",
      measured: tolerance.longestStep_ms,
      goal: 1000,
      unit: "ms",
      remark: `with its ${tolerance.solves} solves, preview, ${seconds(tolerance)}`,
    },
    {
      name: "radial wire: every laying, full-wave, on the soil and raised",
      measured: radials.total_ms,
      goal: 60_000,
      unit: "ms",
      remark: `${radials.solves} solves of ${wordsOf(full)}; one thread`,
    },
  ];
}

/** The quicker of two runs, of which the first pays for the compiler. */
function quickest(request: TrialRequest): Driven {
  const runs = [driven(request), driven(request)];
  return { ...runs[1]!, longestStep_ms: Math.min(...runs.map((run) => run.longestStep_ms)) };
}

function driven(request: TrialRequest): Driven {
  const from = performance.now();
  const trial = trialOf(request);
  if (!trial.ok) throw new RangeError(`searchRows: ${trial.problems[0]?.message}`);
  const kept = new Map<string, Result<ArraySample>>();
  let longestStep_ms = 0;
  for (;;) {
    const before = performance.now();
    const step = trial.value((ask) => kept.get(askKey(ask)));
    if (!step.ok) throw new RangeError(`searchRows: ${step.problems[0]?.message}`);
    const { asks } = step.value;
    const picture = asks.length === 0 ? step.value.picture : null;
    longestStep_ms = Math.max(longestStep_ms, performance.now() - before);
    if (picture) return { picture, solves: kept.size, total_ms: performance.now() - from, longestStep_ms };
    if (asks.length === 0) throw new RangeError("searchRows: the trial ended without a picture");
    for (const ask of asks) kept.set(askKey(ask), arraySample(ask));
  }
}

const seconds = ({ total_ms }: Driven) => `${(total_ms / 1000).toPrecision(2)} s in one thread`;

function wordsOf({ elements, frequency_MHz }: Plan): string {
  const wire_m = elements.reduce((sum, { radials }) => sum + radials.count * radials.length_m, 0);
  return `${Math.round(wire_m)} m of wire (${(wire_m / wavelength_m(frequency_MHz)).toPrecision(2)} wavelengths)`;
}
