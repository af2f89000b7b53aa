import { Findings, type NumberRule } from "../plan/Findings.ts";
import type { PlainData } from "../plan/plainCopy.ts";

/**
 * Reads one number of a typed input by the rules a plan's fields are read by, so that messages sound alike.
 *
 * @param where path of the group the number stands in, such as `line`
 * @param key its name in the group, or its place in the list that `where` names
 * @param name the number in plain words
 * @returns whether it may be used; if not, `findings` holds why
 */
export function checkNumber(
  findings: Findings,
  where: string,
  key: string | number,
  name: string,
  value: number | undefined,
  rule: NumberRule,
): boolean {
  if (typeof key === "number") {
    const own = new Findings();
    const good = checkNumber(own, "", "item", name, value, rule);
    for (const { code, message } of own.problems) findings.add(code, `${where}[${key}]`, message);
    return good;
  }
  const fields: Record<string, PlainData> = value === undefined ? {} : { [key]: value };
  return findings.number(fields, key, where, name, rule) !== undefined;
}
