import { INCH_m } from "../../../engine/index.ts";
import type { Units } from "../../store/useSettings.ts";

/** What a dragged length rounds to: a centimetre or an eighth of an inch; with Shift a millimetre or 1/32 inch. */
export function snapGrid_m(units: Units, fine: boolean): number {
  if (units === "metric") return fine ? 0.001 : 0.01;
  return fine ? INCH_m / 32 : INCH_m / 8;
}

/** The nearest place on the grid. Twelve digits, so that 8.41 is 8.41 and not 8.4100000000000001. */
export function snapLength(length_m: number, units: Units, fine: boolean): number {
  const grid = snapGrid_m(units, fine);
  return Number((Math.round(length_m / grid) * grid).toPrecision(12));
}
