import { describe, type Fields, type Findings, isFields } from "./Findings.ts";
import type { PlainData } from "./plainCopy.ts";

/** The plan version this page writes and reads. */
export const planVersion = 1;

/** Whether this is a plan at all, of a version that is understood; undefined (and a problem) when not. */
export function checkFormat(findings: Findings, value: PlainData): Fields | undefined {
  if (!isFields(value) || value.format !== "hindwire-plan") {
    const found = !isFields(value)
      ? `It is ${describe(value)}`
      : value.format === undefined
        ? 'It has no field "format"'
        : `Its "format" is ${describe(value.format)}`;
    findings.add("unknown-format", "format", `This is not a Hindwire plan. ${found}; a plan's is "hindwire-plan".`);
    return undefined;
  }
  const { version } = value;
  if (version === planVersion) return value;
  if (typeof version === "number" && Number.isInteger(version) && version > planVersion)
    findings.add(
      "newer-version",
      "version",
      `This plan is of version ${version}; this page reads version ${planVersion}. It was left untouched: open it with a newer page.`,
    );
  else
    findings.add(
      "unknown-version",
      "version",
      `The plan's version is ${version === undefined ? "missing" : describe(version)}; this page reads version ${planVersion}.`,
    );
  return undefined;
}
