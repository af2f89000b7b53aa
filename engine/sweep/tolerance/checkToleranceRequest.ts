import { checkNumber } from "../../network/checkNumber.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { spacingOf } from "../../plan/edits/spacingOf.ts";
import { Findings } from "../../plan/Findings.ts";
import { limits } from "../../plan/limits.ts";
import { failed, ok, type Result } from "../../result.ts";
import { checkSeed } from "../best/checkBestRequest.ts";
import { checkLook } from "../best/checkLook.ts";
import type { SoilConstants, ToleranceRequest } from "./ToleranceRequest.ts";

const DRAWS = { least: 20, most: 5000 };
const MOST_RUNGS = 20;
/** Larger errors than these make another antenna. */
const MOST = { height: 0.2, spacing: 0.5, thickness: 0.5, heading_deg: 180 };

/**
 * Whether errors in building can be asked about. Problems: those of the plan; fewer than 20 draws or more than 5000; an error
 * below 0, over a fifth of a length, over half the spacing or the thickness, over 180 degrees; nothing off at all; soil
 * constants out of range, or soil where the plan has none; a seed, elevation or look out of range.
 */
export function checkToleranceRequest(request: ToleranceRequest): Result<ToleranceRequest> {
  const checked = checkPlan(request.plan);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const { errors, soil } = request;
  const findings = new Findings();
  const error = (key: keyof typeof errors, name: string, most: number, unit: string, because?: string) =>
    checkNumber(findings, "errors", key, `The error of ${name}`, errors[key], {
      least: 0,
      most,
      unit,
      ...(because !== undefined && { because }),
    });
  const part = `${MOST.height} of its length`;
  const [driven, reflector, spacing_m] = [drivenOf(plan), reflectorOf(plan), spacingOf(plan)];
  const good = [
    error("driven_m", "the driven element's length", MOST.height * (driven?.height_m ?? 0), "m", part),
    reflector
      ? error("reflector_m", "the reflector's length", MOST.height * reflector.height_m, "m", part)
      : error("reflector_m", "the reflector's length", 0, "m", "the plan has no reflector"),
    spacing_m === undefined
      ? error("spacing_m", "the spacing", 0, "m", "the plan has no reflector")
      : error("spacing_m", "the spacing", MOST.spacing * Math.abs(spacing_m), "m", `${MOST.spacing} of it`),
    error("thickness", "the thickness", MOST.thickness, "of it"),
    error("heading_deg", "the heading", MOST.heading_deg, "degrees"),
  ].every(Boolean);
  if (good && !soil && Object.values(errors).every((value) => value === 0))
    findings.add("no-error", "errors", "Every error is 0 and no soil is given; at least one must be above 0.");
  if (soil) {
    if (plan.ground.kind !== "soil")
      findings.add(
        "needs-soil",
        "soil",
        `The ground is "${plan.ground.kind}"; dry and wet soil can be told apart over "soil" only.`,
      );
    checkSoil(findings, "soil.dry", "dry soil", soil.dry);
    checkSoil(findings, "soil.wet", "wet soil", soil.wet);
  }
  checkNumber(findings, "", "draws", "The number of draws", request.draws, { ...DRAWS, whole: true });
  checkSeed(findings, request.seed);
  const angle = { ...limits.elevation_deg, unit: "degrees" };
  checkNumber(
    findings,
    "",
    "azimuthCutElevation_deg",
    "The azimuth cut's elevation",
    request.azimuthCutElevation_deg,
    angle,
  );
  if (request.rungs_deg.length > MOST_RUNGS)
    findings.add("rung-count", "rungs_deg", `${request.rungs_deg.length} rungs; the limit is ${MOST_RUNGS}.`);
  for (const [i, rung] of request.rungs_deg.slice(0, MOST_RUNGS).entries())
    checkNumber(findings, "rungs_deg", i, `Rung ${i + 1}`, rung, angle);
  checkLook(findings, request.look);
  return findings.problems.length > 0 ? failed(...findings.problems) : ok({ ...request, plan });
}

function checkSoil(findings: Findings, where: string, name: string, constants: SoilConstants): void {
  checkNumber(
    findings,
    where,
    "relativePermittivity",
    `The relative permittivity of ${name}`,
    constants.relativePermittivity,
    limits.soilPermittivity,
  );
  checkNumber(findings, where, "conductivity_SPerM", `The conductivity of ${name}`, constants.conductivity_SPerM, {
    ...limits.soilConductivity_SPerM,
    unit: "S/m",
  });
}
