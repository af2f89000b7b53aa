import type { Complex } from "../../contract.ts";
import { swr } from "../../readouts/swr.ts";
import { ok, type Result } from "../../result.ts";
import { cx } from "../cx.ts";
import type { HarnessDesign } from "./HarnessDesign.ts";
import type { NetworkSolution } from "./Network.ts";
import { solveNetwork } from "./solveNetwork.ts";

/** The antenna's impedance matrix at one frequency of a band. */
export interface PairPoint {
  readonly frequency_MHz: number;
  readonly impedance_ohm: readonly (readonly Complex[])[];
}

export interface HarnessPoint {
  readonly frequency_MHz: number;
  readonly solution: NetworkSolution;
  /** Current of the second element over the first's, as it comes out. */
  readonly ratio: Complex;
  /** Of the ratio against the wanted one. */
  readonly sizeError_dB: number;
  /** −180 to 180. */
  readonly phaseError_deg: number;
  readonly swr: number;
}

/**
 * A harness joined to its antenna over a band: currents that result, input, SWR against `reference_ohm`, stresses at a
 * power. Problems: those of `solveNetwork`, at the first frequency that has any.
 */
export function assessHarness(
  design: HarnessDesign,
  band: readonly PairPoint[],
  reference_ohm = 50,
  power_W = 100,
): Result<readonly HarnessPoint[]> {
  const points: HarnessPoint[] = [];
  for (const { frequency_MHz, impedance_ohm } of band) {
    const solved = solveNetwork(design.network, impedance_ohm, frequency_MHz, power_W);
    if (!solved.ok) return solved;
    const ratio = solved.value.currentRatios[1]!;
    const error = cx.div(ratio, design.wantedRatio);
    const z = solved.value.inputImpedance_ohm;
    points.push({
      frequency_MHz,
      solution: solved.value,
      ratio,
      sizeError_dB: 20 * Math.log10(cx.abs(error)),
      phaseError_deg: (cx.arg(error) * 180) / Math.PI,
      swr: swr(z.re, z.im, reference_ohm),
    });
  }
  return ok(points);
}
