import type { WireProblem } from "../contract.ts";
import type { Note } from "../result.ts";

/** Largest difference between input and the sum of its parts that passes without a note, relative to the input. */
export const POWER_BALANCE = 1e-4;

export interface Powers {
  readonly inputPower_W: number;
  readonly radiatedPower_W: number;
  readonly conductorLoss_W: number;
  readonly loadLoss_W: number;
}

/**
 * Where no soil absorbs, input must equal radiated + conductor + load; a note says when it does not.
 * Over soil the remainder is what the soil takes; a note says when that comes out negative.
 */
export function auditPower(problem: WireProblem, powers: Powers): Note[] {
  const { inputPower_W, radiatedPower_W, conductorLoss_W, loadLoss_W } = powers;
  const remainder = (inputPower_W - radiatedPower_W - conductorLoss_W - loadLoss_W) / inputPower_W;
  if (!(inputPower_W > 0))
    return [
      {
        code: "no-input-power",
        message: "The ports take no net power in; gain has no meaning here.",
        measured: inputPower_W,
      },
    ];
  if (problem.ground.kind !== "soil") {
    if (Math.abs(remainder) <= POWER_BALANCE) return [];
    return [
      {
        code: "power-balance",
        message: `Power in and power accounted for differ by ${(100 * remainder).toPrecision(2)} percent of the input.`,
        measured: remainder,
      },
    ];
  }
  if (remainder < -POWER_BALANCE)
    return [
      {
        code: "power-balance",
        message: `Power accounted for exceeds what goes in by ${(-100 * remainder).toPrecision(2)} percent.`,
        measured: remainder,
      },
    ];
  return [];
}
