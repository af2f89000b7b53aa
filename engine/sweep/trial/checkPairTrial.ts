import type { Plan } from "../../contract.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { Findings, plain } from "../../plan/Findings.ts";
import { limits } from "../../plan/limits.ts";
import { failed, ok, type Result } from "../../result.ts";
import { wavelength_m } from "../../units.ts";
import { modelObstacles } from "../../wires/modelObstacles.ts";
import { checkLook } from "../best/checkLook.ts";
import { checkRange } from "./checkRange.ts";
import { pairAt } from "./pairAt.ts";
import type { Range } from "./Range.ts";
import type { TrialLook } from "./TrialLook.ts";

/** Closer than this a spacing is no longer that of two thin wires with fields of their own; farther there is no reflector. */
const SPACING_wl = { least: 0.02, most: 2 };
const MOST_POINTS = 401;

/**
 * Whether a pair's spacing, and the reflector's length where that is given, can be tried. Problems, all at once: those of
 * the plan (alone, since the rest rests on it); no reflector in it; ranges without length, with fewer than 2 points or
 * more than 401, outside what a plan may have; a look out of range.
 */
export function checkPairTrial(request: {
  readonly plan: Plan;
  readonly look: TrialLook;
  readonly spacing_wl: Range;
  readonly reflectorHeight_m?: Range;
}): Result<Plan> {
  const checked = checkPlan(request.plan);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const obstacles = modelObstacles(plan);
  if (obstacles.length > 0) return failed(...obstacles);
  const findings = new Findings();
  const { spacing_wl, reflectorHeight_m, look } = request;
  const hasPair = drivenOf(plan) !== undefined && reflectorOf(plan) !== undefined;
  if (!hasPair)
    findings.add(
      "needs-reflector",
      "plan.elements",
      `Every element of the plan is fed (${plan.elements.length}); one must not be, the reflector.`,
    );
  const wavelength = wavelength_m(plan.frequency_MHz);
  let good = checkRange(
    findings,
    "spacing_wl",
    "the spacing",
    spacing_wl,
    {
      least: SPACING_wl.least,
      most: Math.min(SPACING_wl.most, limits.position_m / wavelength),
      unit: "wavelengths",
    },
    MOST_POINTS,
  );
  if (reflectorHeight_m)
    good =
      checkRange(
        findings,
        "reflectorHeight_m",
        "the reflector's length",
        reflectorHeight_m,
        {
          least: limits.height_wl.least * wavelength,
          most: Math.min(limits.height_wl.most * wavelength, limits.length_m),
          unit: "m",
          because: `${limits.height_wl.least} to ${limits.height_wl.most} wavelengths, never over ${limits.length_m} m`,
        },
        MOST_POINTS,
      ) && good;
  checkLook(findings, look);
  if (good && hasPair) checkEnds(findings, plan, spacing_wl, reflectorHeight_m, wavelength);
  return findings.problems.length > 0 ? failed(...findings.problems) : ok(plan);
}

/** What other elements, thickness and position forbid at the ends of the ranges. */
function checkEnds(
  findings: Findings,
  plan: Plan,
  spacing_wl: Range,
  reflectorHeight_m: Range | undefined,
  wavelength: number,
): void {
  const heights = reflectorHeight_m ? [reflectorHeight_m.from, reflectorHeight_m.to] : [undefined];
  for (const wl of [spacing_wl.from, spacing_wl.to])
    for (const height of heights) {
      const end = pairAt(plan, {
        spacing_m: wl * wavelength,
        ...(height !== undefined && { reflectorHeight_m: height }),
      });
      const checked = checkPlan(end);
      if (checked.ok) continue;
      const at = `At ${plain(wl)} wavelengths${height === undefined ? "" : ` and ${plain(height)} m`}`;
      for (const problem of checked.problems)
        findings.add(problem.code, `plan.${problem.where}`, `${at}: ${problem.message}`);
      return;
    }
}
