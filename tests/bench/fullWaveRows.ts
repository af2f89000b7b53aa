import { type Plan, sweepBand, withElementHeight, withRadials, withSpacing } from "../../engine/index.ts";
import { keptTable } from "../../engine/kernel/halfSpace/keptTable.ts";
import type { BenchRow } from "./BenchRow.ts";
import { benchPlan, readAll, smallSteps } from "./benchPlan.ts";
import { bestTimes_ms } from "./bestTimes.ts";

/** Every radial a wire over soil: the full answer, solved and read, on the pair of the first visit. */
export function fullWaveRows(): BenchRow[] {
  const plan = benchPlan("full-wave");
  const step = smallSteps();
  const radials = (count: number) => withRadials(plan, { count });
  /** No two wires lie to each other as they did before: nothing kept fits but the soil's table. */
  const moved = (one: Plan) => {
    const by_m = step();
    const longer = withElementHeight(withElementHeight(one, "driven", 7 + by_m), "reflector", 7.4 + by_m);
    return withSpacing(withRadials(longer, { length_m: 3.7 + by_m }), 5.9 + by_m);
  };
  const [table, cold, height, spacing, cold32] = bestTimes_ms(
    [
      { name: "table", run: () => keptTable(10.12e6, 13 + step(), 0.005, 20) },
      { name: "cold", run: () => readAll(moved(radials(16))) },
      { name: "height", run: () => readAll(withElementHeight(radials(16), "reflector", 7.4 + step())) },
      { name: "spacing", run: () => readAll(withSpacing(radials(16), 5.9 + step())) },
      { name: "cold, 32", run: () => readAll(moved(radials(32))) },
    ],
    5,
  );
  const [cold120, sweep] = bestTimes_ms(
    [
      { name: "cold, 120", run: () => readAll(moved(radials(120))) },
      {
        name: "sweep",
        run: () => {
          const from_MHz = 10.1 + step() / 10;
          const band = sweepBand(radials(16), { from_MHz, to_MHz: from_MHz + 0.05, points: 33 });
          if (!band.ok) throw new RangeError(`fullWaveRows: ${band.problems[0]?.message}`);
          return band;
        },
      },
    ],
    2,
  );
  const ms = "ms" as const;
  return [
    { name: "half-space table for one soil and frequency", measured: table!, goal: 300, unit: ms },
    { name: "full-wave, 2 × 16 radials, table ready: cold", measured: cold!, goal: 150, unit: ms },
    { name: "full-wave, 2 × 16 radials: a length moved", measured: height!, goal: 16, unit: ms },
    { name: "full-wave, 2 × 16 radials: the spacing moved", measured: spacing!, goal: 80, unit: ms },
    { name: "full-wave, 2 × 32 radials, table ready: cold", measured: cold32!, goal: 400, unit: ms },
    { name: "full-wave, 2 × 120 radials, table ready: cold", measured: cold120!, goal: 4000, unit: ms },
    { name: "full-wave, 2 × 16 radials: SWR over a band, tables and all", measured: sweep!, goal: 2000, unit: ms },
  ];
}
