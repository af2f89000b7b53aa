import backLawn from "../../demo-data/back-lawn-30m.json?raw";
import {
  type Plan,
  type ReadoutRequest,
  readPlan,
  readPlanFile,
  sweepBand,
  withElementHeight,
  withFrequency,
  withSpacing,
} from "../../engine/index.ts";
import type { BenchRow } from "./BenchRow.ts";
import { bestTimes_ms } from "./bestTimes.ts";

/** What the page asks for each frame of a drag. */
const request: ReadoutRequest = {
  azimuthCutElevation_deg: 8,
  pathElevation_deg: 8,
  rungs_deg: [3, 5, 8, 10, 15, 20, 30],
  rearSector_deg: 120,
};

function planOf(text: string): Plan {
  const read = readPlanFile(text);
  if (!read.ok) throw new RangeError(`planOf: ${read.problems[0]?.message}`);
  return read.value;
}

function mustRead(plan: Plan) {
  const readout = readPlan(plan, request);
  if (!readout.ok) throw new RangeError(`mustRead: ${readout.problems[0]?.message}`);
  return readout.value;
}

/** The soil preview on the invented pair of the first visit: what follows a moving finger. */
export function planRows(): BenchRow[] {
  const plan: Plan = { ...planOf(backLawn), soilModel: "screen" };
  // Another value each time, as under a finger: nothing can be answered from the last answer.
  let n = 0;
  const step = () => {
    n = (n + 1) % 997;
    return n * 1e-4;
  };
  const [height, spacing, frequency, sweep] = bestTimes_ms([
    { name: "height", run: () => mustRead(withElementHeight(plan, "reflector", 7.4 + step())) },
    { name: "spacing", run: () => mustRead(withSpacing(plan, 5.9 + step())) },
    { name: "frequency", run: () => mustRead(withFrequency(plan, 10.1 + step())) },
    { name: "sweep", run: () => sweepBand(plan, { from_MHz: 10.1, to_MHz: 10.15, points: 33 }) },
  ]);
  const what = "preview, 2 elements, solve + both cuts + ladder";
  return [
    { name: `${what}: a length moved`, measured: height!, goal: 3, unit: "ms" },
    { name: `${what}: the spacing moved`, measured: spacing!, goal: 3, unit: "ms" },
    { name: `${what}: another frequency`, measured: frequency!, goal: 3, unit: "ms" },
    { name: "preview, SWR at 33 frequencies", measured: sweep!, goal: 100, unit: "ms" },
  ];
}
