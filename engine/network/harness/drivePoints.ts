import type { Complex } from "../../contract.ts";
import { cx } from "../cx.ts";

export interface DrivePoint {
  readonly voltage_V: Complex;
  readonly current_A: Complex;
  readonly impedance_ohm: Complex;
  /** ½ Re(VI*); below zero where the element gives power back. */
  readonly power_W: number;
}

/**
 * What each base shows when the currents are as wanted: Vᵢ = Σ Zᵢⱼ Iⱼ, Zᵢ = Vᵢ/Iᵢ. Any number of elements, any ratio
 * and phase; peak phasors [A, V, ohm]. An element without current has no finite impedance.
 *
 * @throws RangeError when matrix and currents do not fit together
 */
export function drivePoints(
  impedance_ohm: readonly (readonly Complex[])[],
  currents_A: readonly Complex[],
): readonly DrivePoint[] {
  const n = currents_A.length;
  if (impedance_ohm.length !== n || impedance_ohm.some((row) => row.length !== n))
    throw new RangeError(`drivePoints: ${impedance_ohm.length} rows for ${n} currents`);
  return impedance_ohm.map((row, i) => {
    const voltage_V = row.reduce((v, z, j) => cx.add(v, cx.mul(z, currents_A[j]!)), cx.zero);
    const current_A = currents_A[i]!;
    return {
      voltage_V,
      current_A,
      impedance_ohm: cx.div(voltage_V, current_A),
      power_W: cx.dot(voltage_V, current_A) / 2,
    };
  });
}
