import type { ElementFacts } from "./checkElement.ts";
import { type Findings, plain } from "./Findings.ts";

/** Rules between elements: ids differ, nothing touches, something is fed. */
export function checkTogether(findings: Findings, elements: readonly ElementFacts[]): void {
  if (elements.length > 0 && !elements.some((element) => element.fed))
    findings.add("nothing-fed", "elements", "No element is fed; at least one base must be.");

  for (const [at, one] of elements.entries())
    for (const other of elements.slice(0, at)) {
      if (one.id !== undefined && one.id === other.id)
        findings.add(
          "duplicate-id",
          `elements[${one.index}].id`,
          `Elements ${other.index + 1} and ${one.index + 1} share the id ${JSON.stringify(one.id)}; each needs its own.`,
        );
      checkApart(findings, other, one);
    }
}

function checkApart(findings: Findings, one: ElementFacts, other: ElementFacts): void {
  if (one.forward_m === undefined || other.forward_m === undefined) return;
  if (one.left_m === undefined || other.left_m === undefined) return;
  const forward = one.forward_m - other.forward_m;
  const left = one.left_m - other.left_m;
  const apart_mm = Math.sqrt(forward * forward + left * left) * 1000;
  const radii_mm = ((one.diameter_mm ?? 0) + (other.diameter_mm ?? 0)) / 2;
  if (apart_mm > radii_mm) return;
  findings.add(
    "elements-overlap",
    `elements[${other.index}].forward_m`,
    `Elements ${one.index + 1} and ${other.index + 1} are ${plain(apart_mm)} mm apart between centres; ` +
      `they must be more than ${plain(radii_mm)} mm apart, the sum of their radii.`,
  );
}
