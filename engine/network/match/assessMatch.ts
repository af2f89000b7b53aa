import { swr } from "../../readouts/swr.ts";
import { analyseLadder, type LadderReadout } from "./analyseLadder.ts";
import { feedAt } from "./feedAt.ts";
import { isStaticDrained } from "./isStaticDrained.ts";
import type { Match } from "./Match.ts";
import type { MatchRequest } from "./MatchRequest.ts";
import { type Span, spanBelow } from "./spanBelow.ts";

export interface MatchReadout {
  readonly match: Match;
  /** At the design frequency and the power asked for, losses counted. */
  readonly design: LadderReadout;
  readonly isStaticDrained: boolean;
  /** Over the band, the design frequency among the points. */
  readonly curve: {
    readonly frequency_MHz: readonly number[];
    readonly resistance_ohm: readonly number[];
    readonly reactance_ohm: readonly number[];
    readonly swr: readonly number[];
    readonly loss_dB: readonly number[];
  };
  readonly worstSwr: number;
  readonly worstLoss_dB: number;
  /** Around the design frequency; absent when the limit is not met there. */
  readonly span?: Span;
  /** Every point of the band within the limit. */
  readonly isBandHeld: boolean;
}

/**
 * Puts a match back in front of the antenna, at every frequency of the band. The request must have passed its check.
 * SWR is against the wanted impedance at the match's rig side.
 */
export function assessMatch(match: Match, request: MatchRequest): MatchReadout {
  const { feed, design_MHz, wanted_ohm, swrLimit, power_W = 100 } = request;
  const frequency_MHz = [...new Set([...feed.map((p) => p.frequency_MHz), design_MHz])].sort((a, b) => a - b);
  const at = (f: number) => analyseLadder(match.ladder, f, feedAt(feed, f), wanted_ohm, power_W);
  const all = frequency_MHz.map(at);
  const curve = {
    frequency_MHz,
    resistance_ohm: all.map((r) => r.impedance_ohm.re),
    reactance_ohm: all.map((r) => r.impedance_ohm.im),
    swr: all.map((r) => swr(r.impedance_ohm.re, r.impedance_ohm.im, wanted_ohm)),
    loss_dB: all.map((r) => r.loss_dB),
  };
  const span = spanBelow(frequency_MHz, curve.swr, design_MHz, swrLimit);
  return {
    match,
    design: at(design_MHz),
    isStaticDrained: isStaticDrained(match.ladder),
    curve,
    worstSwr: Math.max(...curve.swr),
    worstLoss_dB: Math.max(...curve.loss_dB),
    ...(span && { span }),
    isBandHeld: curve.swr.every((s) => s <= swrLimit * (1 + 1e-9)),
  };
}
