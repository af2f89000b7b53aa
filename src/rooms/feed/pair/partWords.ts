import { GROUND, type Part } from "../../../../engine/index.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import type { UnitSystem } from "../../../ui/quantity/QuantityKind.ts";
import { capacitanceText, inductanceText } from "../match/sectionWords.ts";

/** What has to be had for a harness, part by part; links between two lines need nothing. */
export function partWords(parts: readonly Part[], units: UnitSystem): string[] {
  return parts.map((part) => wordsOf(part, units)).filter((words) => words !== null);
}

function wordsOf(part: Part, units: UnitSystem): string | null {
  const place = part.to === GROUND || part.from === GROUND ? "across" : "in series";
  switch (part.kind) {
    case "line":
      return `${part.id}: ${formatQuantity(part.length_m, "length_m", units)}`;
    case "coil":
      return `${inductanceText(part.inductance_uH)} ${place}`;
    case "capacitor":
      return `${capacitanceText(part.capacitance_pF)} ${place}`;
    case "resistor":
      return `${part.resistance_ohm} Ω ${place}`;
    case "contact":
      return null;
  }
}
