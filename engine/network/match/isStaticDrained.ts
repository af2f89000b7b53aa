import type { Ladder } from "./Ladder.ts";

/**
 * Whether the antenna's base has a path for direct current to ground through the match: a coil or a shorted stub
 * across, with no capacitor in series before it. Charge from rain and wind then leaks off; it is no lightning protection.
 */
export function isStaticDrained(ladder: Ladder): boolean {
  for (const section of ladder) {
    if (section.kind === "series-capacitor") return false;
    if (section.kind === "shunt-coil" || (section.kind === "stub" && section.end === "shorted")) return true;
  }
  return false;
}
