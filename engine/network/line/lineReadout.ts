import type { Complex } from "../../contract.ts";
import { Findings } from "../../plan/Findings.ts";
import { swr } from "../../readouts/swr.ts";
import { failed, type Note, ok, type Result } from "../../result.ts";
import { chainLoss_dB } from "../chainLoss_dB.ts";
import { checkImpedance } from "../checkImpedance.ts";
import { checkNumber } from "../checkNumber.ts";
import { rigImpedance } from "../rigImpedance.ts";
import type { Line } from "./Line.ts";
import { lineChain } from "./lineChain.ts";
import { matchedLoss_dB } from "./matchedLoss_dB.ts";

export interface LineReadout {
  readonly rigImpedance_ohm: Complex;
  /** Both against the line's nominal impedance. */
  readonly swrAtAntenna: number;
  readonly swrAtRig: number;
  readonly matchedLoss_dB: number;
  readonly totalLoss_dB: number;
  /** What the mismatch adds: total less matched. A little below zero is possible where a short line has an angle in Z₀. */
  readonly extraLoss_dB: number;
  /** Of the power at the rig, the part that reaches the antenna. */
  readonly efficiency: number;
  readonly notes: readonly Note[];
}

/**
 * A length of line between an antenna and a rig at one frequency: impedance and SWR at both ends, loss.
 *
 * Note "meter-flattered" when the matched loss is above 1 dB while the SWR at the antenna is above 2 (common practice).
 * Problems: a length not above 0, a frequency not above 0, an antenna that takes no power (R ≤ 0) or is not finite.
 */
export function lineReadout(
  line: Line,
  length_m: number,
  frequency_MHz: number,
  antenna_ohm: Complex,
): Result<LineReadout> {
  const findings = new Findings();
  checkNumber(findings, "", "length_m", "The length of the line", length_m, { above: 0, unit: "m" });
  checkNumber(findings, "", "frequency_MHz", "The frequency", frequency_MHz, { above: 0, unit: "MHz" });
  checkImpedance(findings, "antenna_ohm", "The antenna's impedance", antenna_ohm);
  if (findings.problems.length > 0) return failed(...findings.problems);
  const chain = lineChain(line, length_m, frequency_MHz);
  const rig = rigImpedance(chain, antenna_ohm);
  const matched = matchedLoss_dB(line, length_m, frequency_MHz);
  const total = chainLoss_dB(chain, antenna_ohm);
  const swrAtAntenna = swr(antenna_ohm.re, antenna_ohm.im, line.impedance_ohm);
  const swrAtRig = swr(rig.re, rig.im, line.impedance_ohm);
  const notes: Note[] = [];
  if (matched > 1 && swrAtAntenna > 2)
    notes.push({
      code: "meter-flattered",
      message: `The line's own loss hides the mismatch: SWR ${swrAtRig.toFixed(2)} at the rig is ${swrAtAntenna.toFixed(2)} at the antenna.`,
      measured: swrAtAntenna,
    });
  return ok({
    rigImpedance_ohm: rig,
    swrAtAntenna,
    swrAtRig,
    matchedLoss_dB: matched,
    totalLoss_dB: total,
    extraLoss_dB: total - matched,
    efficiency: 10 ** (-total / 10),
    notes,
  });
}
