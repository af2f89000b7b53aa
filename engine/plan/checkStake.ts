import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";

/** The rod under an element's base, where there is one. */
export function checkStake(findings: Findings, element: Fields, where: string, of: string): void {
  if (element.stake === undefined) return;
  const path = `${where}.stake`;
  const stake = findings.fields(element.stake, path, `The ground stake ${of}`);
  if (!stake) return;
  findings.number(stake, "length_m", path, `The length of the ground stake ${of}`, { ...limits.stake_m, unit: "m" });
  findings.number(stake, "diameter_mm", path, `The diameter of the ground stake ${of}`, {
    ...limits.stakeDiameter_mm,
    unit: "mm",
  });
}
