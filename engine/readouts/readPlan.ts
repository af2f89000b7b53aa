import type { Plan } from "../contract.ts";
import { ok, type Result } from "../result.ts";
import { solvePlanProblem } from "../solve/solvePlanProblem.ts";
import { feedReadout } from "./feedReadout.ts";
import { halfPowerWidth } from "./halfPowerWidth.ts";
import type { Cut, PlanReadout, ReadoutRequest } from "./PlanReadout.ts";
import { radialCurrents } from "./radialCurrents.ts";
import { readRung } from "./readRung.ts";

/**
 * Everything the workbench shows of a plan at its frequency, as plain data.
 *
 * @param onPart told now and then which part of the work is done, 0..1
 */
export function readPlan(plan: Plan, request: ReadoutRequest, onPart?: (part: number) => void): Result<PlanReadout> {
  const result = solvePlanProblem(plan, onPart);
  if (!result.ok) return result;
  const { solved } = result.value;
  const gain = solved.gain_dBi;

  const elevationCut: Cut = {
    angle_deg: Array.from({ length: 181 }, (_, i) => i),
    gain_dBi: new Array<number>(181).fill(0),
  };
  const elevationGain = elevationCut.gain_dBi as number[];
  // Ahead and behind at one elevation together: the far field keeps what depends on elevation alone.
  for (let e = 0; e <= 90; e++) {
    elevationGain[e] = gain(e, 0);
    elevationGain[180 - e] = gain(e, 180);
  }
  const { mirrored } = solved.far;
  const azimuthCut: Cut = {
    angle_deg: Array.from({ length: 361 }, (_, i) => i - 180),
    gain_dBi: new Array<number>(361).fill(0),
  };
  const azimuthGain = azimuthCut.gain_dBi as number[];
  for (let i = 0; i <= 360; i++)
    azimuthGain[i] = mirrored && i > 180 ? azimuthGain[360 - i]! : gain(request.azimuthCutElevation_deg, i - 180);
  const currents = radialCurrents(result.value.plan, result.value.laid, solved);
  return ok({
    ...feedReadout(result.value.plan, solved),
    efficiency: solved.radiatedPower_W / solved.inputPower_W,
    elevationCut,
    azimuthCut,
    ladder: request.rungs_deg.map((e) => readRung(gain, e, request.rearSector_deg, mirrored)),
    path: readRung(gain, request.pathElevation_deg, request.rearSector_deg, mirrored),
    halfPowerWidth_deg: halfPowerWidth(azimuthCut),
    ...(currents.length > 0 && { radialCurrents: currents }),
    notes: solved.notes,
  });
}
