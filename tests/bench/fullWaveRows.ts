import { buildBasis } from "../../engine/basis/buildBasis.ts";
import { portVectors } from "../../engine/basis/portVectors.ts";
import { C0_mPerS } from "../../engine/constants.ts";
import { type Plan, sweepBandSmooth, withElementHeight, withRadials, withSpacing } from "../../engine/index.ts";
import { keptTable } from "../../engine/kernel/halfSpace/keptTable.ts";
import { surroundings } from "../../engine/kernel/surroundings.ts";
import { solveGeneral } from "../../engine/linalg/solveGeneral.ts";
import { fillMatrix } from "../../engine/matrix/fillMatrix.ts";
import { portStates } from "../../engine/solve/portStates.ts";
import { joinWires } from "../../engine/wires/joinWires.ts";
import { segmentWires } from "../../engine/wires/segmentWires.ts";
import { soilAround } from "../../engine/wires/soilAround.ts";
import { wiresFromPlan } from "../../engine/wires/wiresFromPlan.ts";
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
  const buried = (count: number) => withRadials(radials(count), { height_m: -0.05 });
  const [table, cold, height, spacing, cold32, cold64, cold16buried] = bestTimes_ms(
    [
      { name: "table", run: () => keptTable(10.12e6, 13 + step(), 0.005, 20) },
      { name: "cold", run: () => readAll(moved(radials(16))) },
      { name: "height", run: () => readAll(withElementHeight(radials(16), "reflector", 7.4 + step())) },
      { name: "spacing", run: () => readAll(withSpacing(radials(16), 5.9 + step())) },
      { name: "cold, 32", run: () => readAll(moved(radials(32))) },
      { name: "cold, 64", run: () => readAll(moved(radials(64))) },
      { name: "cold, 16 buried", run: () => readAll(moved(buried(16))) },
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
          const to_MHz = from_MHz + 0.05;
          const band = sweepBandSmooth(radials(16), { from_MHz, to_MHz, points: 33, elevation_deg: 8 });
          if (!band.ok) throw new RangeError(`fullWaveRows: ${band.problems[0]?.message}`);
          return band;
        },
      },
    ],
    2,
  );
  const [plain, own] = bestTimes_ms(
    [
      { name: "plain", run: () => plainSolve(moved(radials(16))) },
      { name: "own", run: () => ownSolve(moved(radials(16))) },
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
    { name: "full-wave, 2 × 16 radials in soil, tables ready: cold", measured: cold16buried!, goal: 150, unit: ms },
    {
      name: "full-wave, 2 × 16 radials: band of SWR and beam, tables and all",
      measured: sweep!,
      goal: 2000,
      unit: ms,
      remark: "few solves, a curve through them, its error checked",
    },
    {
      name: "full-wave, 2 × 16: plain fill and elimination over the engine's",
      measured: plain! / own!,
      goal: 5,
      unit: "×",
      atLeast: true,
      remark: "every pair of segments by itself, every unknown, pivoting",
    },
    {
      name: "full-wave: 2 × 64 radials over 2 × 32, cold",
      measured: cold64! / cold32!,
      goal: 8,
      unit: "×",
      remark: "twice the wires; the elimination alone would be 8",
    },
    {
      name: "memory after all this, the page's own workers have as much at most",
      measured: process.memoryUsage().rss / 2 ** 20,
      goal: 500,
      unit: "MB",
    },
  ];
}

/** Matrix and solution as the engine has them, without the readouts. */
function ownSolve(plan: Plan) {
  const { problem } = laid(plan);
  return portStates(problem, problem.wires, problem.ports).admittance;
}

/** The same wires with no use made of what is alike: each pair of segments integrated, all unknowns, LU with pivots. */
function plainSolve(plan: Plan) {
  const { problem } = laid(plan);
  const { frequency_Hz, wires, ports } = problem;
  const graph = joinWires(wires, false);
  const soil = soilAround(problem);
  const { segments, portEnd } = segmentWires(wires, ports, graph, frequency_Hz, C0_mPerS / frequency_Hz, soil);
  const basis = buildBasis(segments);
  const { kernel } = surroundings(problem, 30);
  const Z = fillMatrix(segments, basis, frequency_Hz, kernel);
  return solveGeneral(Z, basis.count, portVectors(basis, portEnd), ports.length);
}

function laid(plan: Plan) {
  const wires = wiresFromPlan(plan);
  if (!wires.ok) throw new RangeError(`fullWaveRows: ${wires.problems[0]?.message}`);
  return wires.value;
}
