import type { ExpectedStep } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import type { Units } from "../../../store/useSettings.ts";
import { formatFeetInches } from "../../../ui/quantity/formatFeetInches.ts";

/** A short length as it is cut: millimetres, or eighths of an inch. */
export function shortLength(mm: number, units: Units): string {
  if (units === "metric") return `${figure(mm, mm < 10 ? 1 : 0)} mm`;
  return formatFeetInches(mm / 1000);
}

/** How much to cut, and how much of it first; sentences. */
export function cutWords(cut: NonNullable<ExpectedStep["cut"]>, name: string, units: Units): string[] {
  const { mmPerKHz, whole_mm, first_mm } = cut;
  const slope = units === "metric" ? `${figure(mmPerKHz, 2)} mm` : `${figure(mmPerKHz / 25.4, 3)} in`;
  if (whole_mm < 0)
    return [`The ${name} wants to be about ${shortLength(-whole_mm, units)} longer (${slope} per kHz).`];
  return [
    `About ${shortLength(whole_mm, units)} come off the ${name} in all (${slope} per kHz); cut ${shortLength(first_mm, units)} first and read again.`,
  ];
}
