import type { Plan } from "../contract.ts";
import { failed, ok, type Result } from "../result.ts";
import { checkElement } from "./checkElement.ts";
import { checkFields } from "./checkFields.ts";
import { checkFormat } from "./checkFormat.ts";
import { checkGround } from "./checkGround.ts";
import { checkTogether } from "./checkTogether.ts";
import { type Fields, Findings } from "./Findings.ts";
import { findNotFinite } from "./findNotFinite.ts";
import { limits } from "./limits.ts";
import { plainCopy } from "./plainCopy.ts";

/**
 * The gate to the solver: takes anything, and gives a plan or every problem with it, each with its path. Never throws.
 * The value is a plain copy, fields unknown here included. Something that is no plan at all, or a newer version of one,
 * is refused with that one problem.
 */
export function checkPlan(candidate: unknown): Result<Plan> {
  const copied = plainCopy(candidate);
  if (!copied.ok) return copied;
  const findings = new Findings();
  const fields = checkFormat(findings, copied.value);
  if (!fields) return failed(...findings.problems);

  checkPlanFields(findings, fields);
  findNotFinite(findings, fields);
  // Every field of Plan has just been seen to be what its type says.
  return findings.problems.length > 0 ? failed(...findings.problems) : ok(fields as unknown as Plan);
}

/** Everything that makes fields a Plan, apart from its format and version. */
export function checkPlanFields(findings: Findings, plan: Fields): void {
  findings.text(plan, "title", "", "The title", limits.title_characters);
  const frequency_MHz = findings.number(plan, "frequency_MHz", "", "The frequency", {
    ...limits.frequency_MHz,
    unit: "MHz",
  });
  const ground = checkGround(findings, plan);
  const soilModel = findings.choice(plan, "soilModel", "", "The soil model", ["screen", "full-wave"]);

  checkFields(findings, plan);
  const elements = findings.list(plan.elements, "elements", "The list of elements");
  if (!elements) return;
  const { least, most } = limits.elements;
  if (elements.length < least || elements.length > most)
    findings.add(
      "element-count",
      "elements",
      `The plan has ${elements.length} elements; it must have ${least} to ${most}.`,
    );

  // Beyond the limit they are not looked at one by one: a list of thousands has one problem, its length.
  const facts = elements.slice(0, most).flatMap((element, index) => {
    const held = findings.fields(element, `elements[${index}]`, `Element ${index + 1}`);
    return held ? [checkElement(findings, held, index, frequency_MHz)] : [];
  });
  checkTogether(findings, facts);

  if (ground !== "soil" || soilModel !== "screen") return;
  for (const { index, radialCount, radialHeight_m } of facts)
    if (radialCount !== 0 && radialHeight_m !== undefined && radialHeight_m > limits.previewHeight_m)
      findings.add(
        "raised-needs-full-wave",
        `elements[${index}].radials.height_m`,
        `The radials of element ${index + 1} are raised ${radialHeight_m} m; above ${limits.previewHeight_m} m they need the full-wave soil model.`,
      );
}
