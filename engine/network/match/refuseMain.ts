import type { Problem } from "../../result.ts";
import type { Line } from "../line/Line.ts";

/** Why a line cannot be the main line of a match to `wanted_ohm`: its nominal impedance differs by more than 1e-6. */
export function refuseMain(main: Line, wanted_ohm: number): Problem | undefined {
  if (Math.abs(main.impedance_ohm / wanted_ohm - 1) <= 1e-6) return undefined;
  return {
    code: "no-match",
    where: "main",
    message: `The main line, ${main.name}, has ${main.impedance_ohm} ohm; for this match it must have the ${wanted_ohm} ohm wanted.`,
  };
}
