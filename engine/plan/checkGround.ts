import { childPath } from "./childPath.ts";
import type { Fields, Findings } from "./Findings.ts";
import { limits } from "./limits.ts";

/**
 * The ground's kind, and for soil its two constants.
 * @param where path of what holds it; the plan itself when absent
 */
export function checkGround(
  findings: Findings,
  plan: Fields,
  where = "",
): "free-space" | "perfect" | "soil" | undefined {
  const path = childPath(where, "ground");
  const ground = findings.fields(plan.ground, path, "The ground");
  if (!ground) return undefined;
  const kind = findings.choice(ground, "kind", path, "The kind of ground", ["free-space", "perfect", "soil"]);
  if (kind === "soil") {
    const permittivity = "The soil's relative permittivity";
    findings.number(ground, "relativePermittivity", path, permittivity, limits.soilPermittivity);
    const conductivity = { ...limits.soilConductivity_SPerM, unit: "S/m" };
    findings.number(ground, "conductivity_SPerM", path, "The soil's conductivity", conductivity);
  }
  return kind;
}
