import type { Complex } from "../../contract.ts";
import { Findings } from "../../plan/Findings.ts";
import { failed, ok, type Result } from "../../result.ts";
import { capacitorAdmittance } from "../capacitorAdmittance.ts";
import { checkNumber } from "../checkNumber.ts";
import { coilImpedance } from "../coilImpedance.ts";
import { cx } from "../cx.ts";
import type { Line } from "../line/Line.ts";
import { lineChain } from "../line/lineChain.ts";
import { lineWavelength_m } from "../line/lineWavelength_m.ts";

export interface ReversalRequest {
  /** What the base of the element behind has to carry at the design frequency, such as +27 ohm. */
  readonly reactance_ohm: number;
  readonly design_MHz: number;
  /** Where the loads are to be looked at. */
  readonly band_MHz: readonly number[];
  readonly coilQ?: number;
  readonly capacitorQ?: number;
  /** A cable a stub may be cut from. */
  readonly stub: Line;
}

export interface ReversalLoad {
  readonly kind: "coil" | "capacitor" | "shorted stub" | "open stub";
  readonly inductance_uH?: number;
  readonly capacitance_pF?: number;
  readonly length_m?: number;
  /** With its loss, at the design frequency and over the band. */
  readonly design_ohm: Complex;
  readonly band_ohm: readonly Complex[];
}

/**
 * The loads that give the base of an unfed element its reactance: a part (coil for X > 0, capacitor for X < 0) and the
 * shortest stub that can, shorted for X > 0 (X = Z₀ tan βl) and open for X < 0 (X = −Z₀ cot βl), both below a quarter
 * wave. Values are without loss; the impedances over the band have it.
 *
 * Source: textbook line and coil. That the shortest stub is to be preferred, since circulating current costs: practice.
 * Problems: a reactance of 0 (join the base straight) or not finite, frequencies and Q not above 0.
 */
export function reversalLoads(request: ReversalRequest): Result<readonly ReversalLoad[]> {
  const { reactance_ohm: x, design_MHz, band_MHz, coilQ, capacitorQ, stub } = request;
  const findings = new Findings();
  const finite = checkNumber(findings, "", "reactance_ohm", "The base reactance", x, { unit: "ohm" });
  if (finite && x === 0)
    findings.add(
      "no-match",
      "reactance_ohm",
      "The base reactance is 0 ohm; it must differ from 0, or no load is needed.",
    );
  checkNumber(findings, "", "design_MHz", "The design frequency", design_MHz, { above: 0, unit: "MHz" });
  for (const [i, f] of band_MHz.entries())
    checkNumber(findings, "band_MHz", i, `Frequency ${i + 1}`, f, { above: 0, unit: "MHz" });
  if (coilQ !== undefined) checkNumber(findings, "", "coilQ", "The Q of the coil", coilQ, { above: 0 });
  if (capacitorQ !== undefined)
    checkNumber(findings, "", "capacitorQ", "The Q of the capacitor", capacitorQ, { above: 0 });
  if (findings.problems.length > 0) return failed(...findings.problems);

  const over = (at: (f: number) => Complex) => ({ design_ohm: at(design_MHz), band_ohm: band_MHz.map(at) });
  const omega = 2 * Math.PI * design_MHz;
  const inductance_uH = x / omega;
  const capacitance_pF = -1e6 / (omega * x);
  const part: ReversalLoad =
    x > 0
      ? { kind: "coil", inductance_uH, ...over((f) => coilImpedance(inductance_uH, f, coilQ)) }
      : {
          kind: "capacitor",
          capacitance_pF,
          ...over((f) => cx.inv(capacitorAdmittance(capacitance_pF, f, capacitorQ))),
        };
  const angle = x > 0 ? Math.atan(x / stub.impedance_ohm) : Math.atan(-stub.impedance_ohm / x);
  const length_m = (angle / (2 * Math.PI)) * lineWavelength_m(stub, design_MHz);
  const shorted = x > 0;
  return ok([
    part,
    {
      kind: shorted ? "shorted stub" : "open stub",
      length_m,
      ...over((f) => {
        const { a, b, c, d } = lineChain(stub, length_m, f);
        return shorted ? cx.div(b, d) : cx.div(a, c);
      }),
    },
  ]);
}
