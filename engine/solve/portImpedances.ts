import type { Complex, WireProblem } from "../contract.ts";
import { invert } from "../linalg/invert.ts";
import { failed, ok, type Result } from "../result.ts";
import { checkWires } from "../wires/checkWires.ts";
import { gappedJunctions } from "../wires/gappedJunctions.ts";
import { imagesCurrents } from "../wires/imagesCurrents.ts";
import { joinWires } from "../wires/joinWires.ts";
import { isScreened } from "./isScreened.ts";
import { portStates } from "./portStates.ts";
import { screenStates } from "./screenStates.ts";
import { withSeries } from "./withSeries.ts";

/** Open-circuit impedance matrix of the problem's ports in their order; terminations are ignored [ohm]. */
export function portImpedances(problem: WireProblem): Result<readonly (readonly Complex[])[]> {
  const ofTerminations = new Set(["nothing-fed", "junction-cut-off"]);
  const problems = checkWires(problem).filter((p) => !ofTerminations.has(p.code));
  if (problems.length > 0) return failed(...problems);
  const screened = isScreened(problem);
  const states = portStates(problem, problem.wires, problem.ports);
  const P = states.ports;
  const z = invert(
    withSeries(screened ? screenStates(problem, states).admittance : states.admittance, problem.ports),
    P,
  );
  // Rounding may leave a dependent set with an inverse that is finite and means nothing: ask the wires, not the numbers.
  const graph = joinWires(problem.wires, imagesCurrents(problem));
  if (gappedJunctions(problem.wires, problem.ports, graph).length > 0 || !z.every(Number.isFinite))
    return failed({
      code: "ports-dependent",
      where: "ports",
      message:
        "The gaps of these ports cut a junction off entirely, so their currents are not independent; leave one of them out.",
    });
  return ok(
    Array.from({ length: P }, (_, i) =>
      Array.from({ length: P }, (_, j) => ({ re: z[2 * (i * P + j)]!, im: z[2 * (i * P + j) + 1]! })),
    ),
  );
}
