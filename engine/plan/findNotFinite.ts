import { childPath } from "./childPath.ts";
import { type Fields, type Findings, isFields } from "./Findings.ts";
import type { PlainData } from "./plainCopy.ts";

/** Numbers in fields unknown here must be finite too, or writing the plan to a file would lose them. */
export function findNotFinite(findings: Findings, fields: Fields): void {
  const known = new Set(findings.problems.map((problem) => problem.where));
  const look = (value: PlainData, where: string): void => {
    if (typeof value === "number" && !Number.isFinite(value) && !known.has(where))
      findings.add("not-finite", where, `${where} is ${value}; a plan holds finite numbers only.`);
    else if (Array.isArray(value)) for (const [i, item] of value.entries()) look(item, `${where}[${i}]`);
    else if (isFields(value)) for (const [key, item] of Object.entries(value)) look(item, childPath(where, key));
  };
  look(fields, "");
}
