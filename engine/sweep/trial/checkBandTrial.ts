import type { Plan } from "../../contract.ts";
import { checkNumber } from "../../network/checkNumber.ts";
import { checkPlan } from "../../plan/checkPlan.ts";
import { Findings, plain } from "../../plan/Findings.ts";
import { limits } from "../../plan/limits.ts";
import { failed, ok, type Result } from "../../result.ts";
import { modelObstacles } from "../../wires/modelObstacles.ts";
import { checkLook } from "../best/checkLook.ts";
import type { BandTrialRequest } from "./BandTrialRequest.ts";
import { checkRange } from "./checkRange.ts";

const MOST_POINTS = 401;
const MOST_dB = 100;

/**
 * Whether a band can be tried. Problems, all at once: those of the plan (alone, since the rest rests on it) and at the
 * band's edges; a range without length, with fewer than 2 points or more than 401; thresholds nothing can meet; a look
 * out of range.
 */
export function checkBandTrial({ plan: candidate, look, frequency_MHz, good }: BandTrialRequest): Result<Plan> {
  const checked = checkPlan(candidate);
  if (!checked.ok) return checked;
  const plan = checked.value;
  const obstacles = modelObstacles(plan);
  if (obstacles.length > 0) return failed(...obstacles);
  const findings = new Findings();
  const rule = { ...limits.frequency_MHz, unit: "MHz" };
  const sound = checkRange(findings, "frequency_MHz", "the band", frequency_MHz, rule, MOST_POINTS);
  checkLook(findings, look);
  if (good) {
    const dB = { least: 0, most: MOST_dB, unit: "dB" };
    checkNumber(findings, "good", "swr", "The highest SWR that is good", good.swr, { above: 1, most: 1000 });
    checkNumber(findings, "good", "frontToBack_dB", "The front-to-back that is good", good.frontToBack_dB, dB);
    checkNumber(findings, "good", "forwardWithin_dB", "What the gain may fall by", good.forwardWithin_dB, dB);
  }
  if (sound)
    for (const edge_MHz of [frequency_MHz.from, frequency_MHz.to]) {
      const there = checkPlan({ ...plan, frequency_MHz: edge_MHz });
      if (there.ok) continue;
      for (const problem of there.problems)
        findings.add(problem.code, `plan.${problem.where}`, `At ${plain(edge_MHz)} MHz: ${problem.message}`);
    }
  return findings.problems.length > 0 ? failed(...findings.problems) : ok(plan);
}
