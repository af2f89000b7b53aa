import {
  analyseLadder,
  type FeedPoint,
  type Ladder,
  type Line,
  lineReadout,
  type Result,
  swr,
} from "../../../../engine/index.ts";

/** A meter at the rig is made for this. */
export const meter_ohm = 50;

/** The way from the rig to the antenna at one frequency. */
export interface LinePoint {
  readonly frequency_MHz: number;
  readonly antenna: { readonly re: number; readonly im: number };
  /** At the rig's side of the match, or of the feedpoint where there is none: what the line is ended in. */
  readonly lineEnd: { readonly re: number; readonly im: number };
  readonly rig: { readonly re: number; readonly im: number };
  /** Against the line's own impedance: the standing wave that is on it. */
  readonly swrOnLine: number;
  /** Against 50 Ω, as the rig's meter shows it. */
  readonly swrAtRig: number;
  readonly matchedLoss_dB: number;
  readonly lineLoss_dB: number;
  readonly matchLoss_dB: number;
  /** Of the power the rig gives, the part that reaches the antenna. */
  readonly efficiency: number;
}

/**
 * Antenna, match (an empty ladder: none) and line put one behind the other, seen from the rig, at every point.
 * Problems: those of `lineReadout` at the first point that has any.
 */
export function lineOver(
  line: Line,
  length_m: number,
  feed: readonly FeedPoint[],
  ladder: Ladder = [],
): Result<readonly LinePoint[]> {
  const points: LinePoint[] = [];
  for (const { frequency_MHz, impedance_ohm } of feed) {
    const match = analyseLadder(ladder, frequency_MHz, impedance_ohm, line.impedance_ohm);
    const readout = lineReadout(line, length_m, frequency_MHz, match.impedance_ohm);
    if (!readout.ok) return readout;
    const { rigImpedance_ohm: rig, swrAtAntenna, matchedLoss_dB, totalLoss_dB } = readout.value;
    points.push({
      frequency_MHz,
      antenna: impedance_ohm,
      lineEnd: match.impedance_ohm,
      rig,
      swrOnLine: swrAtAntenna,
      swrAtRig: swr(rig.re, rig.im, meter_ohm),
      matchedLoss_dB,
      lineLoss_dB: totalLoss_dB,
      matchLoss_dB: match.loss_dB,
      efficiency: 10 ** (-(totalLoss_dB + match.loss_dB) / 10),
    });
  }
  return { ok: true, value: points };
}
