import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";

/** How an element's base is connected. @returns whether it is fed */
export function checkBase(findings: Findings, element: Fields, where: string, of: string): boolean {
  const path = `${where}.base`;
  const base = findings.fields(element.base, path, `The base ${of}`);
  if (!base) return false;
  const kind = findings.choice(base, "kind", path, `The base ${of}`, ["fed", "joined", "loaded", "open"]);
  if (kind === "fed" && base.current !== undefined) {
    const current = findings.fields(base.current, `${path}.current`, `The feed current ${of}`);
    if (current) {
      const magnitude = { above: 0, most: limits.currentMagnitude };
      findings.number(current, "magnitude", `${path}.current`, `The size of the feed current ${of}`, magnitude);
      findings.number(current, "phase_deg", `${path}.current`, `The phase of the feed current ${of}`);
    }
  }
  if (kind === "loaded") {
    const resistance = { least: 0, most: limits.load_ohm, unit: "ohm" };
    const reactance = { least: -limits.load_ohm, most: limits.load_ohm, unit: "ohm" };
    findings.number(base, "resistance_ohm", path, `The resistance of the base load ${of}`, resistance);
    findings.number(base, "reactance_ohm", path, `The reactance of the base load ${of}`, reactance);
  }
  return kind === "fed";
}
