import { Findings } from "../../plan/Findings.ts";
import { failed, ok, type Result } from "../../result.ts";
import { checkImpedance } from "../checkImpedance.ts";
import { checkNumber } from "../checkNumber.ts";
import type { MatchRequest } from "./MatchRequest.ts";

/**
 * Whether a match can be designed at all. Problems: no feed points, frequencies not above 0 or not rising, an impedance
 * that takes no power or is not finite, a design frequency outside the band, Z₀ or Q not above 0, an SWR limit not
 * above 1, a power not above 0.
 */
export function checkMatchRequest(request: MatchRequest): Result<MatchRequest> {
  const findings = new Findings();
  const { feed, design_MHz } = request;
  if (feed.length === 0) findings.add("missing", "feed", "The band holds no point; it must hold one or more.");
  for (const [i, point] of feed.entries()) {
    const where = `feed[${i}]`;
    const least = i === 0 ? 0 : feed[i - 1]!.frequency_MHz;
    const rule = { above: least, unit: "MHz", ...(i > 0 && { because: "frequencies must rise" }) };
    checkNumber(findings, where, "frequency_MHz", `The frequency of point ${i + 1}`, point.frequency_MHz, rule);
    checkImpedance(findings, `${where}.impedance_ohm`, `The impedance at point ${i + 1}`, point.impedance_ohm);
  }
  if (findings.problems.length === 0)
    checkNumber(findings, "", "design_MHz", "The design frequency", design_MHz, {
      least: feed[0]!.frequency_MHz,
      most: feed.at(-1)!.frequency_MHz,
      unit: "MHz",
      because: "the band given",
    });
  checkNumber(findings, "", "wanted_ohm", "The wanted impedance", request.wanted_ohm, { above: 0, unit: "ohm" });
  checkNumber(findings, "", "swrLimit", "The SWR limit", request.swrLimit, { above: 1 });
  if (request.coilQ !== undefined) checkNumber(findings, "", "coilQ", "The Q of coils", request.coilQ, { above: 0 });
  if (request.capacitorQ !== undefined)
    checkNumber(findings, "", "capacitorQ", "The Q of capacitors", request.capacitorQ, { above: 0 });
  if (request.power_W !== undefined)
    checkNumber(findings, "", "power_W", "The power", request.power_W, { above: 0, unit: "W" });
  return findings.problems.length > 0 ? failed(...findings.problems) : ok(request);
}
