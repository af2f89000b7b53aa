import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";

/**
 * Length of an odd number of quarter waves: 1, 3, 5 … Such a line without loss turns the voltage at its start into the
 * current at its end, I = −jV/Z₀ (1, 5 …) or +jV/Z₀ (3, 7 …), whatever hangs there: it forces the current [m].
 *
 * @throws RangeError when the number is not odd
 */
export function oddQuarters_m(line: Line, frequency_MHz: number, quarters: number): number {
  if (!(quarters > 0 && quarters % 2 === 1)) throw new RangeError(`oddQuarters_m: ${quarters} quarter waves`);
  return (quarters * lineWavelength_m(line, frequency_MHz)) / 4;
}
