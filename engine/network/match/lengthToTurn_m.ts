import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";

/**
 * The shortest length of line that turns a reflection from one angle to another, towards the rig: (from − to)/2β, at
 * least zero and below half a wave [rad; m].
 */
export function lengthToTurn_m(line: Line, frequency_MHz: number, from_rad: number, to_rad: number): number {
  const half = lineWavelength_m(line, frequency_MHz) / 2;
  const turns = (from_rad - to_rad) / (2 * Math.PI);
  const part = turns - Math.floor(turns);
  // An angle that is met already, up to rounding, is met at once and not half a wave on.
  return part > 1 - 1e-12 ? 0 : part * half;
}
