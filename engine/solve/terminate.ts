import type { PortInput } from "../contract.ts";
import { solveGeneral } from "../linalg/solveGeneral.ts";

/**
 * Port voltages and currents of a network with admittance matrix Y once every port has its termination:
 * V = v (voltage, short: 0), YV = i (current, open: 0), V + Z·YV = 0 (load).
 *
 * @param admittance P × P complex, row-major [S]
 * @returns 2·P voltages [V] and 2·P currents [A]
 */
export function terminate(
  admittance: Float64Array,
  terminations: readonly PortInput["termination"][],
): { volts: Float64Array; amperes: Float64Array } {
  const P = terminations.length;
  const A = new Float64Array(2 * P * P);
  const b = new Float64Array(2 * P);
  terminations.forEach((t, i) => {
    const row = 2 * i * P;
    switch (t.kind) {
      case "voltage":
      case "short":
        A[row + 2 * i] = 1;
        if (t.kind === "voltage") {
          b[2 * i] = t.volts.re;
          b[2 * i + 1] = t.volts.im;
        }
        break;
      case "current":
      case "open":
        A.set(admittance.subarray(row, row + 2 * P), row);
        if (t.kind === "current") {
          b[2 * i] = t.amperes.re;
          b[2 * i + 1] = t.amperes.im;
        }
        break;
      case "load": {
        const { re, im } = t.impedance_ohm;
        for (let j = 0; j < P; j++) {
          const yr = admittance[row + 2 * j]!;
          const yi = admittance[row + 2 * j + 1]!;
          A[row + 2 * j] = re * yr - im * yi + (i === j ? 1 : 0);
          A[row + 2 * j + 1] = re * yi + im * yr;
        }
        break;
      }
    }
  });
  const volts = solveGeneral(A, P, b, 1);
  const amperes = new Float64Array(2 * P);
  for (let i = 0; i < P; i++)
    for (let j = 0; j < P; j++) {
      const yr = admittance[2 * (i * P + j)]!;
      const yi = admittance[2 * (i * P + j) + 1]!;
      amperes[2 * i]! += yr * volts[2 * j]! - yi * volts[2 * j + 1]!;
      amperes[2 * i + 1]! += yr * volts[2 * j + 1]! + yi * volts[2 * j]!;
    }
  return { volts, amperes };
}
