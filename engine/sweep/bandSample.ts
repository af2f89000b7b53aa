import type { Plan } from "../contract.ts";
import { checkPlan } from "../plan/checkPlan.ts";
import { feedReadout } from "../readouts/feedReadout.ts";
import type { PlanReadout } from "../readouts/PlanReadout.ts";
import { failed, ok, type Result } from "../result.ts";
import { solveTerminated } from "../solve/solveTerminated.ts";
import { checkWires } from "../wires/checkWires.ts";
import { wiresFromPlan } from "../wires/wiresFromPlan.ts";
import { type BeamField, beamField } from "./beamField.ts";

/** One solved frequency of a sweep. */
export interface BandSample {
  readonly frequency_MHz: number;
  readonly feeds: PlanReadout["feeds"];
  /** Present where an elevation was asked for. */
  readonly beam?: BeamField;
}

/**
 * A plan at a frequency other than its own, its wires cut as they are at its own: along a sweep the curves are then smooth,
 * and at the plan's frequency they are what `readPlan` says.
 *
 * @param elevation_deg absent: feed impedances only
 */
export function bandSample(candidate: Plan, frequency_MHz: number, elevation_deg?: number): Result<BandSample> {
  const plan = checkPlan({ ...candidate, frequency_MHz });
  if (!plan.ok) return plan;
  const laid = wiresFromPlan(plan.value, candidate.frequency_MHz);
  if (!laid.ok) return laid;
  const problems = checkWires(laid.value.problem);
  if (problems.length > 0) return failed(...problems);
  const solved = solveTerminated(laid.value.problem);
  const { feeds } = feedReadout(plan.value, solved);
  if (elevation_deg === undefined) return ok({ frequency_MHz, feeds });
  const first = plan.value.elements.findIndex((element) => element.base.kind === "fed");
  return ok({ frequency_MHz, feeds, beam: beamField(solved, first, elevation_deg) });
}
