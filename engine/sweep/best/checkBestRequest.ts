import type { Plan } from "../../contract.ts";
import { checkNumber } from "../../network/checkNumber.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { Findings, type NumberRule, plain } from "../../plan/Findings.ts";
import { limits } from "../../plan/limits.ts";
import { failed, ok, type Result } from "../../result.ts";
import { wavelength_m } from "../../units.ts";
import type { BestRequest, Between } from "./BestRequest.ts";
import { checkLook } from "./checkLook.ts";
import { wireInPlan } from "./wireInPlan.ts";

export const MOST_SHOWN = 12;
const MOST_WEIGHT = 1000;
/** Closer than this a spacing is no longer that of two thin wires with fields of their own; farther there is no reflector. */
const SPACING_wl = { least: 0.02, most: 2 };
const MOST_COIL_ohm = 1000;

/**
 * Whether a best pair can be sought. Problems: those of the plan; no reflector in it; bounds the wrong way about, or outside
 * what a plan may have; less wire than the least lengths take; weights below 0 or all 0; a segment the wrong way about; a
 * Q, seed, number shown or look out of range.
 */
export function checkBestRequest(request: BestRequest): Result<BestRequest> {
  const checked = checkPlan(request.plan);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const findings = new Findings();
  if (!reflectorOf(plan) || !drivenOf(plan))
    findings.add(
      "needs-reflector",
      "plan.elements",
      `The plan has ${plan.elements.length} element, all of them fed; it must have one fed and one that is not.`,
    );
  checkWeights(findings, request);
  checkBounds(findings, request, plan);
  const { from, to } = request.segment_MHz;
  const rule = { ...limits.frequency_MHz, unit: "MHz" };
  const low = checkNumber(findings, "segment_MHz", "from", "The lower edge of the segment", from, rule);
  checkNumber(findings, "segment_MHz", "to", "The upper edge of the segment", to, {
    ...rule,
    ...(low && { least: from, because: "not below the lower edge" }),
  });
  if (request.coilQ !== undefined)
    checkNumber(findings, "", "coilQ", "The Q of the coil", request.coilQ, { above: 0, most: 100_000 });
  checkSeed(findings, request.seed);
  if (request.shown !== undefined)
    checkNumber(findings, "", "shown", "The number of designs shown", request.shown, {
      least: 1,
      most: MOST_SHOWN,
      whole: true,
    });
  checkLook(findings, request.look);
  return findings.problems.length > 0 ? failed(...findings.problems) : ok({ ...request, plan });
}

/** A seed is a whole number that fits 32 bits. */
export function checkSeed(findings: Findings, seed: number): void {
  checkNumber(findings, "", "seed", "The seed", seed, { least: 0, most: 2 ** 32 - 1, whole: true });
}

function checkWeights(findings: Findings, { weights }: BestRequest): void {
  const names = {
    forward: "gain ahead",
    back: "front to back",
    rear: "front to rear",
    swr: "the SWR",
  };
  let good = true;
  for (const key of ["forward", "back", "rear", "swr"] as const)
    good =
      checkNumber(findings, "weights", key, `The weight of ${names[key]}`, weights[key], {
        least: 0,
        most: MOST_WEIGHT,
      }) && good;
  if (good && weights.forward + weights.back + weights.rear + weights.swr === 0)
    findings.add(
      "no-weight",
      "weights",
      "All four weights are 0; at least one must be above 0, or nothing is better than anything.",
    );
}

function checkBounds(findings: Findings, { bounds }: BestRequest, plan: Plan): void {
  const wavelength = wavelength_m(plan.frequency_MHz);
  const height: NumberRule = {
    least: limits.height_wl.least * wavelength,
    most: Math.min(limits.height_wl.most * wavelength, limits.length_m),
    unit: "m",
  };
  const spacing: NumberRule = {
    least: SPACING_wl.least * wavelength,
    most: Math.min(SPACING_wl.most * wavelength, limits.position_m),
    unit: "m",
    because: `${SPACING_wl.least} to ${SPACING_wl.most} wavelengths`,
  };
  const coil: NumberRule = { least: 0, most: MOST_COIL_ohm, unit: "ohm" };
  const pair = (key: "driven_m" | "reflector_m" | "spacing_m" | "coil_ohm", name: string, rule: NumberRule) => {
    const { least, most }: Between = bounds[key];
    const low = checkNumber(findings, `bounds.${key}`, "least", `The least ${name}`, least, rule);
    const high = checkNumber(findings, `bounds.${key}`, "most", `The most ${name}`, most, rule);
    if (low && high && least > most)
      findings.add(
        "bounds-order",
        `bounds.${key}`,
        `The least ${name} is ${plain(least)} ${rule.unit} and the most ${plain(most)} ${rule.unit}; the most must not be less.`,
      );
    return low && high;
  };
  const driven = pair("driven_m", "length of the driven element", height);
  const reflector = pair("reflector_m", "length of the reflector", height);
  pair("spacing_m", "spacing", spacing);
  pair("coil_ohm", "reactance of the coil", coil);
  if (bounds.swr !== undefined) checkNumber(findings, "bounds", "swr", "The highest SWR", bounds.swr, { above: 1 });
  if (bounds.wire_m === undefined) return;
  const [a, b] = [drivenOf(plan), reflectorOf(plan)];
  const least =
    driven && reflector && a && b
      ? wireInPlan(plan) - a.height_m - b.height_m + bounds.driven_m.least + bounds.reflector_m.least
      : undefined;
  checkNumber(findings, "bounds", "wire_m", "The wire", bounds.wire_m, {
    ...(least === undefined ? { above: 0 } : { least, because: "the least lengths and the plan's radials" }),
    unit: "m",
  });
}
