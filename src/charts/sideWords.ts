import { figure } from "./figure.ts";
import type { SideFigures } from "./sideFigures.ts";

/** The side figures in plain words: what they are measured against, what becomes of 100 W, who leads whom. */
export function sideWords(side: SideFigures, elevation_deg: number, nameOf: (elementId: string) => string): string {
  const said = [`Behind and abeam against the beam, all at ${elevation_deg}° elevation.`];
  if (Number.isFinite(side.efficiency)) {
    const sky_W = Math.round(side.efficiency * 100);
    said.push(`Of 100 W into the feedpoint ${sky_W} W leave as sky wave; ${100 - sky_W} W warm soil and wire.`);
  }
  for (const { elementId, magnitude, phase_deg } of side.currents) {
    if (!Number.isFinite(magnitude)) continue;
    const lead = Math.round(phase_deg);
    const phase = lead === 0 ? "in step with it" : `${Math.abs(lead)}° ${lead > 0 ? "ahead of" : "behind"} it`;
    said.push(`The ${nameOf(elementId)} carries ${figure(magnitude, 2)} of the fed element's current, ${phase}.`);
  }
  return said.join(" ");
}
