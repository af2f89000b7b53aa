import { checkNumber } from "../../network/checkNumber.ts";
import type { Findings } from "../../plan/Findings.ts";
import { limits } from "../../plan/limits.ts";
import type { TrialLook } from "../trial/TrialLook.ts";

/** Notes what is wrong with where a trial looks: the path's elevation, the rear sector, the arrival angles. */
export function checkLook(findings: Findings, look: TrialLook): void {
  const angle = { ...limits.elevation_deg, unit: "degrees" };
  checkNumber(findings, "look", "pathElevation_deg", "The path's elevation", look.pathElevation_deg, angle);
  checkNumber(findings, "look", "rearSector_deg", "The rear sector", look.rearSector_deg, {
    ...limits.sector_deg,
    unit: "degrees",
  });
  if (!look.arrival_deg) return;
  const { from, to } = look.arrival_deg;
  const low = checkNumber(findings, "look.arrival_deg", "from", "The lowest arrival angle", from, angle);
  checkNumber(findings, "look.arrival_deg", "to", "The highest arrival angle", to, {
    ...angle,
    ...(low && { least: from, because: "not below the lowest" }),
  });
}
