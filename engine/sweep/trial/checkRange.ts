import { checkNumber } from "../../network/checkNumber.ts";
import type { Findings, NumberRule } from "../../plan/Findings.ts";
import { plain } from "../../plan/Findings.ts";
import type { Range } from "./Range.ts";

/**
 * Notes what is wrong with a range: an end outside its rule, no length, too few or too many points.
 *
 * @param name what runs over it, in plain words, such as "the spacing"
 */
export function checkRange(
  findings: Findings,
  where: string,
  name: string,
  { from, to, points }: Range,
  rule: NumberRule,
  mostPoints: number,
): boolean {
  const low = checkNumber(findings, where, "from", `The start of ${name}`, from, rule);
  const high = checkNumber(findings, where, "to", `The end of ${name}`, to, rule);
  const counted = checkNumber(findings, where, "points", `The number of points of ${name}`, points, {
    least: 2,
    most: mostPoints,
    whole: true,
  });
  const unit = rule.unit === undefined ? "" : ` ${rule.unit}`;
  const ordered = to > from;
  if (low && high && !ordered)
    findings.add(
      "range-order",
      where,
      `The range of ${name} runs from ${plain(from)} to ${plain(to)}${unit}; its end must lie above its start.`,
    );
  return low && high && counted && ordered;
}
