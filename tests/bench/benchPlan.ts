import backLawn from "../../demo-data/back-lawn-30m.json?raw";
import { type Plan, type PlanReadout, type ReadoutRequest, readPlan, readPlanFile } from "../../engine/index.ts";

/** The invented pair of the first visit. */
export function benchPlan(soilModel: Plan["soilModel"]): Plan {
  const read = readPlanFile(backLawn);
  if (!read.ok) throw new RangeError(`benchPlan: ${read.problems[0]?.message}`);
  return { ...read.value, soilModel };
}

/** What the page asks for each frame of a drag. */
const request: ReadoutRequest = {
  azimuthCutElevation_deg: 8,
  pathElevation_deg: 8,
  rungs_deg: [3, 5, 8, 10, 15, 20, 30],
  rearSector_deg: 120,
};

/** Solve, both cuts and the ladder; throws when the plan cannot be solved, so that no row times a refusal. */
export function readAll(plan: Plan): PlanReadout {
  const readout = readPlan(plan, request);
  if (!readout.ok) throw new RangeError(`readAll: ${readout.problems[0]?.message}`);
  return readout.value;
}

/** Another small number each time, as under a finger: nothing can be answered from the last answer. */
export function smallSteps(): () => number {
  let n = 0;
  return () => {
    n = (n + 1) % 997;
    return n * 1e-4;
  };
}
