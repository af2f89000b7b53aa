import type { Complex, PortResult, WireProblem, WireSolution } from "../contract.ts";
import { failed, ok, type Result } from "../result.ts";
import { checkWires } from "../wires/checkWires.ts";
import { solveTerminated } from "./solveTerminated.ts";

const complex = (a: Float64Array, i: number): Complex => ({ re: a[2 * i]!, im: a[2 * i + 1]! });

/** V/I; of an open port, where no current flows, infinite. */
function quotient(v: Complex, i: Complex): Complex {
  const d = i.re * i.re + i.im * i.im;
  if (d === 0) return { re: Number.POSITIVE_INFINITY, im: 0 };
  return { re: (v.re * i.re + v.im * i.im) / d, im: (v.im * i.re - v.re * i.im) / d };
}

/**
 * Currents, powers and fields of any set of straight wires as terminated (contract: WireProblem, WireSolution).
 *
 * Method: thin-wire electric-field integral equation, mixed potentials, overlapping triangles, Galerkin.
 * Accuracy: see DEVELOPERS.md, "How far to trust it". At a load the port's impedance is −V-to-I of the load itself.
 */
export function solveWires(problem: WireProblem): Result<WireSolution> {
  const problems = checkWires(problem);
  if (problems.length > 0) return failed(...problems);
  const solved = solveTerminated(problem);
  const ports: PortResult[] = problem.ports.map((port, i) => {
    const voltage_V = complex(solved.volts, i);
    const current_A = port.termination.kind === "open" ? { re: 0, im: 0 } : complex(solved.amperes, i);
    return { id: port.id, current_A, voltage_V, impedance_ohm: quotient(voltage_V, current_A) };
  });
  if (!ports.every((p) => Number.isFinite(p.voltage_V.re) && Number.isFinite(p.current_A.re)))
    return failed({
      code: "network-singular",
      where: "ports",
      message:
        "These terminations leave the currents undetermined (for instance a current forced into an open gap, or gaps that cut a junction off).",
    });
  const { inputPower_W, radiatedPower_W, conductorLoss_W, loadLoss_W, notes } = solved;
  return ok({
    ports,
    inputPower_W,
    radiatedPower_W,
    conductorLoss_W,
    loadLoss_W,
    notes,
    gain_dBi: (elevation_deg: number, azimuth_deg: number) => solved.gain_dBi(elevation_deg, azimuth_deg),
  });
}
