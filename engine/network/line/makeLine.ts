import { Findings } from "../../plan/Findings.ts";
import { failed, ok, type Result } from "../../result.ts";
import { checkNumber } from "../checkNumber.ts";
import { fitLineLoss } from "./fitLineLoss.ts";
import type { Line } from "./Line.ts";
import type { LineType } from "./LineType.ts";

/**
 * Turns the description of a cable into one that can be calculated with.
 *
 * Problems (all at once, paths below `where`): an impedance not above 0 or over 10 000 ohm; a velocity factor not above
 * 0 or over 1; a loss below 0; a frequency not above 0; no loss at all stated; numbers missing or not finite.
 */
export function makeLine(type: LineType, where = "line"): Result<Line> {
  const findings = new Findings();
  const impedance = { above: 0, most: 10_000, unit: "ohm" };
  checkNumber(findings, where, "impedance_ohm", "The impedance of the line", type.impedance_ohm, impedance);
  checkNumber(findings, where, "velocityFactor", "The velocity factor", type.velocityFactor, { above: 0, most: 1 });
  const { loss } = type;
  if ("root_dBPer100m" in loss) {
    const rule = { least: 0, unit: "dB per 100 m" };
    checkNumber(findings, `${where}.loss`, "root_dBPer100m", "The loss by √f", loss.root_dBPer100m, rule);
    checkNumber(findings, `${where}.loss`, "linear_dBPer100m", "The loss by f", loss.linear_dBPer100m, rule);
  } else {
    if (loss.length === 0)
      findings.add("missing", `${where}.loss`, "The line states no loss; it must state one or more.");
    for (const [i, point] of loss.entries()) {
      const at = `${where}.loss[${i}]`;
      checkNumber(findings, at, "frequency_MHz", `The frequency of loss ${i + 1}`, point.frequency_MHz, {
        above: 0,
        unit: "MHz",
      });
      checkNumber(findings, at, "loss_dBPer100m", `Loss ${i + 1}`, point.loss_dBPer100m, {
        least: 0,
        unit: "dB per 100 m",
      });
    }
  }
  if (findings.problems.length > 0) return failed(...findings.problems);
  const constants = "root_dBPer100m" in loss ? loss : fitLineLoss(loss);
  return ok({
    id: type.id,
    name: type.name,
    impedance_ohm: type.impedance_ohm,
    velocityFactor: type.velocityFactor,
    impedanceAngle: type.impedanceAngle ?? "by-loss",
    root_dBPer100m: constants.root_dBPer100m,
    linear_dBPer100m: constants.linear_dBPer100m,
  });
}
