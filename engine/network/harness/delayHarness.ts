import type { Complex } from "../../contract.ts";
import { failed, ok, type Result } from "../../result.ts";
import { checkNumber } from "../checkNumber.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";
import { checkPair } from "./checkPair.ts";
import type { HarnessDesign } from "./HarnessDesign.ts";

export interface DelayHarnessRequest {
  readonly impedance_ohm: readonly (readonly Complex[])[];
  readonly frequency_MHz: number;
  /** Current of the second element over the first's. */
  readonly ratio: Complex;
  /** From the tee to each base, equal lengths. */
  readonly feeder: Line;
  readonly feeder_m: number;
  readonly delay: Line;
  /** Absent: as long in degrees as the phase wanted. */
  readonly delay_m?: number;
}

/**
 * Two equal lines from a tee, and a delay line before that of the element that is to lag: cut as long in degrees as the
 * phase wanted. That is the right phase only on a line ended in its own impedance, which the elements of a pair are not;
 * what current results is for `solveNetwork` to say. Size and phase are both left to chance.
 *
 * Problems: those of `checkPair`, lengths not above 0, a phase of zero (nothing to delay).
 */
export function delayHarness(request: DelayHarnessRequest): Result<HarnessDesign> {
  const { impedance_ohm, frequency_MHz, ratio, feeder, feeder_m, delay } = request;
  const findings = checkPair(impedance_ohm, ratio, frequency_MHz);
  checkNumber(findings, "", "feeder_m", "The length of the equal lines", feeder_m, { above: 0, unit: "m" });
  if (request.delay_m !== undefined)
    checkNumber(findings, "", "delay_m", "The length of the delay line", request.delay_m, { above: 0, unit: "m" });
  const phase = cx.arg(ratio);
  if (findings.problems.length === 0 && Math.abs(phase) < 1e-9)
    findings.add("no-match", "ratio", "The phase wanted is 0 degrees; a delay line must have a phase to make.");
  if (findings.problems.length > 0) return failed(...findings.problems);
  const delay_m = request.delay_m ?? (Math.abs(phase) / (2 * Math.PI)) * lineWavelength_m(delay, frequency_MHz);
  const lagging = phase < 0 ? 2 : 1;
  const start = (base: 1 | 2) => (base === lagging ? "delayed" : "tee");
  return ok({
    kind: "delay-line",
    name: `equal lines and a delay line before element ${lagging}`,
    network: {
      source: "tee",
      bases: ["base 1", "base 2"],
      parts: [
        { id: "delay line", kind: "line", from: "tee", to: "delayed", line: delay, length_m: delay_m },
        { id: "line 1", kind: "line", from: start(1), to: "base 1", line: feeder, length_m: feeder_m },
        { id: "line 2", kind: "line", from: start(2), to: "base 2", line: feeder, length_m: feeder_m },
      ],
    },
    wantedRatio: ratio,
    isExact: false,
    notes: [
      {
        code: "length-is-not-phase",
        message:
          "A line delays by its length only when it is ended in its own impedance; look at the currents that result.",
      },
    ],
  });
}
