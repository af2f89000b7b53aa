import { C0_mPerS } from "../../constants.ts";
import type { Plan } from "../../contract.ts";
import { segmentCounts } from "../../wires/segmentCounts.ts";
import { soilAround } from "../../wires/soilAround.ts";
import { wiresFromPlan } from "../../wires/wiresFromPlan.ts";

/**
 * How many segments the upright of each element of a checked plan is cut into at the plan's frequency; undefined where the
 * plan's soil model cannot take it.
 */
export function uprightCuts(plan: Plan): readonly number[] | undefined {
  const laid = wiresFromPlan(plan);
  if (!laid.ok) return undefined;
  const { problem } = laid.value;
  const counts = segmentCounts(problem.wires, C0_mPerS / problem.frequency_Hz, soilAround(problem));
  return plan.elements.map(({ id }) => counts[problem.wires.findIndex((wire) => wire.id === id)]!);
}
