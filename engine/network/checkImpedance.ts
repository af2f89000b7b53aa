import type { Complex } from "../contract.ts";
import type { Findings } from "../plan/Findings.ts";
import { checkNumber } from "./checkNumber.ts";

/** Whether an impedance takes power and is finite; notes why not. The resistance must be above 0 [ohm]. */
export function checkImpedance(findings: Findings, where: string, name: string, impedance_ohm: Complex): boolean {
  const rule = { above: 0, unit: "ohm" };
  const real = checkNumber(findings, where, "re", `${name} (resistance)`, impedance_ohm.re, rule);
  const imaginary = checkNumber(findings, where, "im", `${name} (reactance)`, impedance_ohm.im, { unit: "ohm" });
  return real && imaginary;
}
