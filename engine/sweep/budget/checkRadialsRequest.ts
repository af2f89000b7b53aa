import { checkNumber } from "../../network/checkNumber.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { Findings } from "../../plan/Findings.ts";
import { limits } from "../../plan/limits.ts";
import { failed, ok, type Result } from "../../result.ts";
import { wavelength_m } from "../../units.ts";
import { checkLook } from "../best/checkLook.ts";
import { FEWEST, SHORTEST_wl } from "./layingsToTry.ts";
import type { RadialsRequest } from "./RadialsRequest.ts";

/** Longest reel that is asked about [m]. */
const MOST_WIRE_m = 20_000;
const MOST_HEIGHTS = 3;

/**
 * Whether a reel of wire can be asked about. Problems: those of the plan; ground without soil; less wire than two of the
 * shortest radials under each element take, or more than 20 km; no height or more than three, or outside a plan's limits;
 * a number of radials or a knee out of range; a look out of range.
 */
export function checkRadialsRequest(request: RadialsRequest): Result<RadialsRequest> {
  const plan = checkPlan(request.plan);
  if (!plan.ok) return plan;
  const findings = new Findings();
  const { frequency_MHz, ground, elements } = plan.value;
  const wavelength = wavelength_m(frequency_MHz);
  if (ground.kind !== "soil")
    findings.add(
      "needs-soil",
      "plan.ground",
      `The ground is "${ground.kind}"; how much wire to lay is a question of soil, so it must be "soil".`,
    );
  checkNumber(findings, "", "wire_m", "The wire", request.wire_m, {
    least: FEWEST * elements.length * SHORTEST_wl * wavelength,
    most: MOST_WIRE_m,
    unit: "m",
    because: `at least ${FEWEST} radials of ${SHORTEST_wl} wavelength under each element`,
  });
  if (!(request.heights_m.length >= 1 && request.heights_m.length <= MOST_HEIGHTS))
    findings.add(
      "height-count",
      "heights_m",
      `${request.heights_m.length} heights of radials; there must be 1 to ${MOST_HEIGHTS}.`,
    );
  for (const [i, height_m] of request.heights_m.slice(0, MOST_HEIGHTS).entries())
    checkNumber(findings, "heights_m", i, `Height ${i + 1} of radials`, height_m, {
      least: -limits.radialDepth_m,
      most: limits.radialHeight_wl * wavelength,
      unit: "m",
    });
  if (request.mostRadials !== undefined)
    checkNumber(findings, "", "mostRadials", "The largest number of radials", request.mostRadials, {
      least: FEWEST,
      most: limits.radials.most,
      whole: true,
    });
  if (request.knee_dBPer10m !== undefined)
    checkNumber(findings, "", "knee_dBPer10m", "The knee", request.knee_dBPer10m, {
      above: 0,
      most: 10,
      unit: "dB per 10 m",
    });
  checkLook(findings, request.look);
  return findings.problems.length > 0 ? failed(...findings.problems) : ok({ ...request, plan: plan.value });
}
