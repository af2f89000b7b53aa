import {
  analyseLadder,
  type Complex,
  type FeedStress,
  feedStress,
  type Ladder,
  type Line,
  type LineReadout,
  lineReadout,
  type Result,
  type SectionReadout,
} from "../../../../engine/index.ts";

export interface StressFacts {
  /** What leaves the line for the match, and what then reaches the base, of the power at the rig. */
  readonly atMatch_W: number;
  readonly atBase_W: number;
  readonly line: LineReadout;
  /** At the base, for the power that reaches it. */
  readonly base: FeedStress;
  /** Along the line, for the power at its far end. */
  readonly onLine: FeedStress;
  /** Each part of the match, in its order. */
  readonly parts: readonly SectionReadout[];
}

/**
 * Powers, voltages and currents from the rig to the base at one frequency: the line's loss first, then the match's.
 * Problems: those of `lineReadout` and `feedStress`.
 */
export function stressFacts(
  antenna_ohm: Complex,
  frequency_MHz: number,
  line: Line,
  length_m: number,
  ladder: Ladder,
  power_W: number,
): Result<StressFacts> {
  const unscaled = analyseLadder(ladder, frequency_MHz, antenna_ohm, line.impedance_ohm);
  const through = lineReadout(line, length_m, frequency_MHz, unscaled.impedance_ohm);
  if (!through.ok) return through;
  const atMatch_W = power_W * through.value.efficiency;
  const match = analyseLadder(ladder, frequency_MHz, antenna_ohm, line.impedance_ohm, atMatch_W);
  const base = feedStress(antenna_ohm, match.antenna.power_W, line.impedance_ohm);
  if (!base.ok) return base;
  const onLine = feedStress(match.impedance_ohm, atMatch_W, line.impedance_ohm);
  if (!onLine.ok) return onLine;
  return {
    ok: true,
    value: {
      atMatch_W,
      atBase_W: match.antenna.power_W,
      line: through.value,
      base: base.value,
      onLine: onLine.value,
      parts: match.sections,
    },
  };
}
