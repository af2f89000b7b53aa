import type { Section } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import type { UnitSystem } from "../../../ui/quantity/QuantityKind.ts";
import { shortCable } from "../line/cableName.ts";

/** One part of a match as it is bought, wound or cut. */
export function sectionWords(section: Section, units: UnitSystem): string {
  switch (section.kind) {
    case "series-coil":
      return `${inductanceText(section.inductance_uH)} in series`;
    case "shunt-coil":
      return `${inductanceText(section.inductance_uH)} across`;
    case "series-capacitor":
      return `${capacitanceText(section.capacitance_pF)} in series`;
    case "shunt-capacitor":
      return `${capacitanceText(section.capacitance_pF)} across`;
    case "line":
      return `${section.parallel === 2 ? "twice " : ""}${formatQuantity(section.length_m, "length_m", units)} of ${shortCable(section.line.name)}${section.parallel === 2 ? " in parallel" : ""}`;
    case "stub":
      return `${section.end} stub, ${formatQuantity(section.length_m, "length_m", units)} of ${shortCable(section.line.name)}`;
    case "retrim":
      return `element recut by ${signedFigure(section.reactance_ohm, 1)} Ω`;
  }
}

/** Three figures: nobody winds a coil closer. */
export const inductanceText = (uH: number) => (uH < 1 ? `${figure(uH, 3)} µH` : `${figure(uH, uH < 10 ? 2 : 1)} µH`);
export const capacitanceText = (pF: number) => `${figure(pF, pF < 10 ? 1 : 0)} pF`;
