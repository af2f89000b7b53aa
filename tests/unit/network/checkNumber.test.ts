import { expect, test } from "vitest";
import { checkNumber } from "../../../engine/network/checkNumber.ts";
import { Findings } from "../../../engine/plan/Findings.ts";

test("a number by its name or by its place; good or not, and why not", () => {
  const findings = new Findings();
  const rule = { above: 0, unit: "m" };
  expect(checkNumber(findings, "lines", "length_m", "The length", 3, rule)).toBe(true);
  expect(checkNumber(findings, "lines", 2, "Length 3", 3, rule)).toBe(true);
  expect(findings.problems).toEqual([]);
  expect(checkNumber(findings, "lines", "length_m", "The length", 0, rule)).toBe(false);
  expect(checkNumber(findings, "lines", 2, "Length 3", Number.NaN, rule)).toBe(false);
  expect(checkNumber(findings, "", "length_m", "The length", undefined, rule)).toBe(false);
  expect(findings.problems).toEqual([
    { code: "out-of-range", where: "lines.length_m", message: "The length is 0 m; it must be above 0 m." },
    { code: "not-finite", where: "lines[2]", message: "Length 3 is NaN; it must be a finite number." },
    { code: "missing", where: "length_m", message: "The length is missing; it must be a number in m." },
  ]);
});
