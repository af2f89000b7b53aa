import type { Complex } from "../../contract.ts";
import { swr } from "../../readouts/swr.ts";
import { cx } from "../cx.ts";
import { rigImpedance } from "../rigImpedance.ts";
import type { Ladder } from "./Ladder.ts";
import { sectionChain } from "./sectionChain.ts";

export interface LadderReadout {
  /** At the rig's side of the match. */
  readonly impedance_ohm: Complex;
  readonly swr: number;
  /** Power into the match over power into the antenna. */
  readonly loss_dB: number;
  /** One per section, in the ladder's order, at the power asked for. */
  readonly sections: readonly SectionReadout[];
  readonly antenna: { readonly voltage_Vrms: number; readonly current_Arms: number; readonly power_W: number };
}

export interface SectionReadout {
  readonly dissipated_W: number;
  /**
   * The larger of its two ends for a line (not the largest along it), across the part for all others; likewise current.
   * A stub's current is the one at its open mouth.
   */
  readonly voltage_Vrms: number;
  readonly current_Arms: number;
}

/**
 * A match put back: from the antenna's impedance to the rig through the chain matrix of every part, lossy as it is.
 * Knows nothing of how the match was found.
 *
 * @param antenna_ohm must take power (Re > 0); @param power_W into the match at the rig's side
 */
export function analyseLadder(
  ladder: Ladder,
  frequency_MHz: number,
  antenna_ohm: Complex,
  reference_ohm: number,
  power_W = 1,
): LadderReadout {
  const { abs, add, dot, mul, scale, sub } = cx;
  // Outwards with one ampere in the antenna, rms; scaled to the power at the end.
  let v: Complex = antenna_ohm;
  let i: Complex = cx.one;
  let z: Complex = antenna_ohm;
  const steps = ladder.map((section) => {
    const m = sectionChain(section, frequency_MHz);
    const [v2, i2] = [v, i];
    v = add(mul(m.a, v2), mul(m.b, i2));
    i = add(mul(m.c, v2), mul(m.d, i2));
    z = rigImpedance(m, z);
    const series = section.kind.startsWith("series") || section.kind === "retrim";
    const line = section.kind === "line";
    return {
      dissipated_W: dot(v, i) - dot(v2, i2),
      voltage_Vrms: line ? Math.max(abs(v), abs(v2)) : series ? abs(sub(v, v2)) : abs(v),
      current_Arms: line ? Math.max(abs(i), abs(i2)) : series ? abs(i) : abs(sub(i, i2)),
    };
  });
  const input_W = dot(v, i);
  const up = Math.sqrt(power_W / input_W);
  return {
    impedance_ohm: z,
    swr: swr(z.re, z.im, reference_ohm),
    loss_dB: 10 * Math.log10(input_W / antenna_ohm.re),
    sections: steps.map((s) => ({
      dissipated_W: s.dissipated_W * up * up,
      voltage_Vrms: s.voltage_Vrms * up,
      current_Arms: s.current_Arms * up,
    })),
    antenna: {
      voltage_Vrms: abs(scale(antenna_ohm, up)),
      current_Arms: up,
      power_W: antenna_ohm.re * up * up,
    },
  };
}
