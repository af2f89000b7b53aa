import { type BenchPoint, failed, ok, type Result } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";

const meter_ohm = 50;

/**
 * A point from R and SWR, for a meter that shows no sign of X or no X at all: s + 1/s = (R² + X² + 50²)/(50 R) solved for
 * X. Problem: no X gives that SWR with that R.
 */
export function pointFromSwr(
  frequency_MHz: number,
  resistance_ohm: number,
  swr: number,
  isAbove: boolean,
): Result<BenchPoint> {
  const square = meter_ohm * resistance_ohm * (swr + 1 / swr) - resistance_ohm ** 2 - meter_ohm ** 2;
  // R and SWR as printed are rounded: X is 0 where they miss each other by less than that.
  if (square < -0.02 * meter_ohm * resistance_ohm * swr)
    return failed({
      code: "not-together",
      where: "swr",
      message: `R of ${figure(resistance_ohm, 1)} Ω alone makes SWR ${figure(Math.max(resistance_ohm / meter_ohm, meter_ohm / resistance_ohm), 2)}; with X it is more, so it cannot be ${figure(swr, 2)}.`,
    });
  const size = Math.sqrt(Math.max(0, square));
  return ok({ frequency_MHz, resistance_ohm, reactance_ohm: size === 0 ? 0 : isAbove ? size : -size });
}
