import type { ElementPlan } from "../../contract.ts";
import { solveGeneral } from "../../linalg/solveGeneral.ts";

/**
 * Currents into the bases [A peak], 2·P, by the port matrix Z and what is connected to each base:
 *
 *   fed: Σ Z I = 1 V, or I given;  joined: Σ Z I = 0;  loaded: Σ Z I + Z_L I = 0;  open: I = 0.
 *
 * @param z P × P complex, row-major [ohm]
 */
export function baseCurrents(elements: readonly Pick<ElementPlan, "base">[], z: ArrayLike<number>): Float64Array {
  const P = elements.length;
  const A = new Float64Array(2 * P * P);
  const b = new Float64Array(2 * P);
  elements.forEach(({ base }, i) => {
    const row = 2 * i * P;
    const given = base.kind === "fed" ? base.current : undefined;
    if (base.kind === "open" || given) {
      A[row + 2 * i] = 1;
      if (!given) return;
      const phase = (given.phase_deg * Math.PI) / 180;
      b[2 * i] = given.magnitude * Math.cos(phase);
      b[2 * i + 1] = given.magnitude * Math.sin(phase);
      return;
    }
    for (let j = 0; j < 2 * P; j++) A[row + j] = z[row + j]!;
    if (base.kind === "fed") b[2 * i] = 1;
    if (base.kind === "loaded") {
      A[row + 2 * i]! += base.resistance_ohm;
      A[row + 2 * i + 1]! += base.reactance_ohm;
    }
  });
  return solveGeneral(A, P, b, 1);
}
