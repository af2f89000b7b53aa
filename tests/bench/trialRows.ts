import { performance } from "node:perf_hooks";
import {
  driveTrial,
  type MapRequest,
  type Plan,
  readPlan,
  reflectorOf,
  type TrialPicture,
  trialOf,
  withRadials,
} from "../../engine/index.ts";
import type { BenchRow } from "./BenchRow.ts";
import { benchPlan } from "./benchPlan.ts";

const look = { pathElevation_deg: 8, rearSector_deg: 120 };

/** Spacing and reflector length, 60 × 60, on the pair of the first visit: in one thread, solves and all. */
export function trialRows(): BenchRow[] {
  const preview = benchPlan("screen");
  const full = withRadials(benchPlan("full-wave"), { count: 16 });
  // The first run pays for the compiler and the soil's table.
  timed(preview);
  const quick = timed(preview);
  const single_ms = solvedOneByOne_ms(preview, 20);
  const slow = timed(full);
  return [
    {
      name: "map 60 × 60, preview, one thread",
      measured: quick.time_ms,
      goal: 1000,
      unit: "ms",
      remark: wordsOf(quick.picture),
    },
    {
      name: "the same 3600 solved one by one, over the map",
      measured: (3600 * single_ms) / quick.time_ms,
      goal: 10,
      unit: "×",
      atLeast: true,
    },
    {
      name: "map 60 × 60, full-wave, 2 × 16 radials, one thread",
      measured: slow.time_ms,
      goal: 60_000,
      unit: "ms",
      remark: wordsOf(slow.picture),
    },
  ];
}

function timed(plan: Plan): { readonly time_ms: number; readonly picture: TrialPicture } {
  const height_m = reflectorOf(plan)!.height_m;
  const request: MapRequest = {
    kind: "map",
    plan,
    look,
    spacing_wl: { from: 0.05, to: 0.5, points: 60 },
    reflectorHeight_m: { from: 0.92 * height_m, to: 1.08 * height_m, points: 60 },
  };
  const from = performance.now();
  const trial = trialOf(request);
  const picture = trial.ok ? driveTrial(trial.value) : trial;
  if (!picture.ok) throw new RangeError(`trialRows: ${picture.problems[0]?.message}`);
  return { time_ms: performance.now() - from, picture: picture.value };
}

function solvedOneByOne_ms(plan: Plan, times: number): number {
  const from = performance.now();
  for (let i = 0; i < times; i++) readPlan(plan, { ...look, azimuthCutElevation_deg: 8, rungs_deg: [] });
  return (performance.now() - from) / times;
}

function wordsOf(picture: TrialPicture): string {
  if (picture.kind !== "map") throw new RangeError(`trialRows: a picture of kind ${picture.kind}`);
  const { nodes, checks, error_dB, error_ohm, isAgreed } = picture.error;
  return `${nodes} solves and ${checks} checks, off by ${error_dB.toFixed(3)} dB and ${error_ohm.toFixed(2)} ohm${isAgreed ? "" : ", not agreed"}`;
}
