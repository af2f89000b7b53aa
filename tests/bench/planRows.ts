import { sweepBand, sweepBandSmooth, withElementHeight, withFrequency, withSpacing } from "../../engine/index.ts";
import type { BenchRow } from "./BenchRow.ts";
import { benchPlan, readAll, smallSteps } from "./benchPlan.ts";
import { bestTimes_ms } from "./bestTimes.ts";

/** The soil preview on the pair of the first visit: what follows a moving finger. */
export function planRows(): BenchRow[] {
  const plan = benchPlan("screen");
  const step = smallSteps();
  const [height, spacing, frequency, sweep, smooth] = bestTimes_ms([
    { name: "height", run: () => readAll(withElementHeight(plan, "reflector", 7.4 + step())) },
    { name: "spacing", run: () => readAll(withSpacing(plan, 5.9 + step())) },
    { name: "frequency", run: () => readAll(withFrequency(plan, 10.1 + step())) },
    { name: "sweep", run: () => sweepBand(plan, { from_MHz: 10.1, to_MHz: 10.15, points: 33 }) },
    { name: "smooth", run: () => sweepBandSmooth(plan, { from_MHz: 10.1, to_MHz: 10.15, points: 33 }) },
  ]);
  const what = "preview, 2 elements, solve + both cuts + ladder";
  return [
    { name: `${what}: a length moved`, measured: height!, goal: 3, unit: "ms" },
    { name: `${what}: the spacing moved`, measured: spacing!, goal: 3, unit: "ms" },
    { name: `${what}: another frequency`, measured: frequency!, goal: 3, unit: "ms" },
    { name: "preview, SWR at 33 frequencies, each solved", measured: sweep!, goal: 100, unit: "ms" },
    { name: "preview, SWR at 33 frequencies from few solves", measured: smooth!, goal: 20, unit: "ms" },
  ];
}
