import type { WireProblem } from "../contract.ts";
import { halfSpaceOf } from "../kernel/halfSpace/HalfSpace.ts";
import { failed, ok, type Result } from "../result.ts";
import { checkWires } from "../wires/checkWires.ts";
import { soilPower, soilPowerCost } from "./soilPower.ts";
import { solveTerminated } from "./solveTerminated.ts";

/** Segment integrals an audit may take: some minutes. */
const MOST_INTEGRALS = 3e9;

export interface SoilPowerAudit {
  readonly inputPower_W: number;
  /** Through the upper half space, from the far field. */
  readonly radiatedPower_W: number;
  readonly conductorLoss_W: number;
  readonly loadLoss_W: number;
  /** Down through the surface of the soil, from the spectrum of the currents (see soilPower). */
  readonly soilPower_W: number;
  /** (radiated + conductor + load + soil)/input: 1 where everything is accounted for. */
  readonly balance: number;
}

/**
 * Where the input of wires over soil goes, each part found by itself: what the soil takes is not the remainder but comes
 * from the currents by plane-wave theory, so the balance holds the impedance matrix and its kernels to account.
 *
 * Accuracy: balance within 1e-4 of 1 down to wires 2 cm above soil. Seconds; the lower and wider the wires, the longer.
 */
export function auditSoilPower(problem: WireProblem): Result<SoilPowerAudit> {
  const problems = checkWires(problem);
  if (problems.length > 0) return failed(...problems);
  const { ground, frequency_Hz } = problem;
  if (ground.kind !== "soil" || problem.soilModel !== "full-wave")
    return failed({
      code: "audit-needs-full-wave",
      where: "soilModel",
      message: `The power taken by soil is found with the full-wave soil model only; this is "${ground.kind === "soil" ? (problem.soilModel ?? "screen") : ground.kind}".`,
    });
  const deep = problem.wires.find((w) => Math.min(w.from_m[2], w.to_m[2]) < 0);
  if (deep)
    return failed({
      code: "audit-needs-air",
      where: "wires",
      message: `The power taken by soil is found for wires in air only; wire "${deep.id}" goes down to z = ${Math.min(deep.from_m[2], deep.to_m[2])} m.`,
    });
  const solved = solveTerminated(problem);
  const soil = halfSpaceOf(frequency_Hz, ground.relativePermittivity, ground.conductivity_SPerM);
  const { segments } = solved.states;
  const cost = soilPowerCost(segments, soil);
  if (cost > MOST_INTEGRALS)
    return failed({
      code: "audit-too-large",
      where: "wires",
      message: `These wires are so wide and low that the audit would take ${cost.toExponential(1)} integrals; the limit is ${MOST_INTEGRALS.toExponential(0)}.`,
    });
  const { inputPower_W, radiatedPower_W, conductorLoss_W, loadLoss_W } = solved;
  const soilPower_W = soilPower(segments, solved.currents, soil);
  return ok({
    inputPower_W,
    radiatedPower_W,
    conductorLoss_W,
    loadLoss_W,
    soilPower_W,
    balance: (radiatedPower_W + conductorLoss_W + loadLoss_W + soilPower_W) / inputPower_W,
  });
}
