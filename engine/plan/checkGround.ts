import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";

/** The ground's kind, and for soil its two constants. */
export function checkGround(findings: Findings, plan: Fields): "free-space" | "perfect" | "soil" | undefined {
  const ground = findings.fields(plan.ground, "ground", "The ground");
  if (!ground) return undefined;
  const kind = findings.choice(ground, "kind", "ground", "The kind of ground", ["free-space", "perfect", "soil"]);
  if (kind === "soil") {
    const permittivity = "The soil's relative permittivity";
    findings.number(ground, "relativePermittivity", "ground", permittivity, limits.soilPermittivity);
    const conductivity = { ...limits.soilConductivity_SPerM, unit: "S/m" };
    findings.number(ground, "conductivity_SPerM", "ground", "The soil's conductivity", conductivity);
  }
  return kind;
}
