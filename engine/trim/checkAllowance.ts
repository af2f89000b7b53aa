import { checkNumber } from "../network/checkNumber.ts";
import type { Findings } from "../plan/Findings.ts";
import { limits } from "../plan/limits.ts";
import type { BenchAllowance } from "../plan/PlanBench.ts";

/** Cut long by 3 and 4 percent, as is common practice (no source); radials by 1. */
export const defaultAllowance: BenchAllowance = { driven_percent: 3, reflector_percent: 4, radial_percent: 1 };

/** Notes what is wrong with the lengths things are cut long by. */
export function checkAllowance(findings: Findings, where: string, allowance: BenchAllowance): void {
  const rule = { ...limits.bench.allowance_percent, unit: "percent" };
  const of = (key: keyof BenchAllowance, name: string) =>
    checkNumber(findings, where, key, `The allowance of ${name}`, allowance[key], rule);
  of("driven_percent", "the driven");
  of("reflector_percent", "the reflector");
  of("radial_percent", "radials");
}
