import type { Complex } from "../../contract.ts";
import { Findings } from "../../plan/Findings.ts";
import { swr } from "../../readouts/swr.ts";
import { failed, ok, type Result } from "../../result.ts";
import { checkImpedance } from "../checkImpedance.ts";
import { checkNumber } from "../checkNumber.ts";

export interface FeedStress {
  readonly base_Vrms: number;
  readonly base_Vpeak: number;
  readonly base_Arms: number;
  readonly base_Apeak: number;
  /** The largest along a line of the given impedance that carries this power into this base. */
  readonly lineMost_Vrms: number;
  readonly lineMost_Vpeak: number;
  readonly lineMost_Arms: number;
  readonly swr: number;
}

/**
 * Voltages and currents at a base that takes a power, and the largest along the line that brings it:
 * I = √(P/R), V = I|Z|; on the line √(P Z₀ S) and √(P S/Z₀), reached only where the line is long enough to hold a
 * maximum. The line's loss is left out: with P the power at the base it is right near the base and low towards the rig by
 * the loss. "rms" are of the carrier at full power, "peak" √2 times those.
 *
 * Source: standing waves, any textbook. Problems: a power, Z₀ or resistance not above 0, numbers not finite.
 */
export function feedStress(antenna_ohm: Complex, power_W: number, line_ohm: number): Result<FeedStress> {
  const findings = new Findings();
  checkImpedance(findings, "antenna_ohm", "The antenna's impedance", antenna_ohm);
  checkNumber(findings, "", "power_W", "The power", power_W, { above: 0, unit: "W" });
  checkNumber(findings, "", "line_ohm", "The impedance of the line", line_ohm, { above: 0, unit: "ohm" });
  if (findings.problems.length > 0) return failed(...findings.problems);
  const base_Arms = Math.sqrt(power_W / antenna_ohm.re);
  const base_Vrms = base_Arms * Math.hypot(antenna_ohm.re, antenna_ohm.im);
  const s = swr(antenna_ohm.re, antenna_ohm.im, line_ohm);
  const lineMost_Vrms = Math.sqrt(power_W * line_ohm * s);
  return ok({
    base_Vrms,
    base_Vpeak: base_Vrms * Math.SQRT2,
    base_Arms,
    base_Apeak: base_Arms * Math.SQRT2,
    lineMost_Vrms,
    lineMost_Vpeak: lineMost_Vrms * Math.SQRT2,
    lineMost_Arms: Math.sqrt((power_W * s) / line_ohm),
    swr: s,
  });
}
