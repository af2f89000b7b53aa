import type { Plan, PlanSolution } from "../contract.ts";
import { feedReadout } from "../readouts/feedReadout.ts";
import { ok, type Result } from "../result.ts";
import { solvePlanProblem } from "./solvePlanProblem.ts";

/** Feed impedances, base currents, efficiency and gain of a plan (contract: Plan, PlanSolution). */
export function solvePlan(plan: Plan): Result<PlanSolution> {
  const result = solvePlanProblem(plan);
  if (!result.ok) return result;
  const { solved } = result.value;
  return ok({
    ...feedReadout(result.value.plan, solved),
    efficiency: solved.radiatedPower_W / solved.inputPower_W,
    notes: solved.notes,
    gain_dBi: (elevation_deg: number, azimuth_deg: number) => solved.gain_dBi(elevation_deg, azimuth_deg),
  });
}
