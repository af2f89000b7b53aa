import type { Complex } from "../../contract.ts";
import { Findings } from "../../plan/Findings.ts";
import { checkNumber } from "../checkNumber.ts";

/**
 * The findings about a pair to be fed: a 2 × 2 matrix of finite numbers, a wanted ratio that is finite and not zero, a
 * frequency above 0. The caller goes on with its own fields.
 */
export function checkPair(
  impedance_ohm: readonly (readonly Complex[])[],
  ratio: Complex,
  frequency_MHz: number,
): Findings {
  const findings = new Findings();
  checkNumber(findings, "", "frequency_MHz", "The frequency", frequency_MHz, { above: 0, unit: "MHz" });
  const re = checkNumber(findings, "ratio", "re", "The current ratio (real part)", ratio.re, {});
  const im = checkNumber(findings, "ratio", "im", "The current ratio (imaginary part)", ratio.im, {});
  if (re && im && ratio.re === 0 && ratio.im === 0)
    findings.add("out-of-range", "ratio", "The current ratio is 0; both elements must carry current to be fed.");
  if (impedance_ohm.length !== 2 || impedance_ohm.some((row) => row.length !== 2))
    findings.add("wrong-shape", "impedance_ohm", "The antenna's matrix must be 2 by 2 for a fed pair.");
  for (const [i, row] of impedance_ohm.entries())
    for (const [j, z] of row.entries())
      if (!Number.isFinite(z.re) || !Number.isFinite(z.im))
        findings.add("not-finite", `impedance_ohm[${i}][${j}]`, `Impedance ${i + 1}, ${j + 1} is not a finite number.`);
  return findings;
}
