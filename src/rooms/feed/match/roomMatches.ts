import {
  assessMatch,
  type Complex,
  designMatches,
  type Line,
  type LTopology,
  type MatchAdvice,
  type MatchReadout,
  type MatchRequest,
  matchKey,
  matchLNetwork,
  type PlanFeedline,
  type Problem,
  type Result,
  recommendMatch,
} from "../../../../engine/index.ts";
import type { BandFeed } from "../bandFeed.ts";

export interface KeyedMatch {
  readonly key: string;
  readonly readout: MatchReadout;
}

export interface RoomMatches {
  readonly request: MatchRequest;
  /** Feed impedance at the design frequency. */
  readonly antenna_ohm: Complex;
  /** "No match" first. */
  readonly candidates: readonly KeyedMatch[];
  readonly advice: MatchAdvice;
  readonly adviceKey: string;
  readonly refused: readonly { readonly kind: string; readonly problem: Problem }[];
  readonly networks: readonly LTopology[];
}

/**
 * Every match there is for a feedpoint over its band, with the main line's cable and one other at hand, each put back
 * with its losses; the recommendation; all eight L networks. Problems: those of `designMatches`.
 */
export function roomMatches(feed: BandFeed, feedline: PlanFeedline, main: Line, section: Line): Result<RoomMatches> {
  const { coilQ, capacitorQ, swrLimit, power_W } = feedline;
  const request: MatchRequest = {
    feed: feed.judged,
    design_MHz: feed.design_MHz,
    wanted_ohm: main.impedance_ohm,
    swrLimit,
    stock: main.id === section.id ? [main] : [main, section],
    power_W,
    coilQ,
    capacitorQ,
  };
  const designs = designMatches(request);
  if (!designs.ok) return designs;
  const all = designs.value.matches.map((one) => one.match);
  const candidates = designs.value.matches.map((readout) => ({ key: matchKey(readout.match, all), readout }));
  const advice = recommendMatch(designs.value.matches, swrLimit);
  const antenna_ohm = feed.at(feed.design_MHz);
  return {
    ok: true,
    value: {
      request,
      antenna_ohm,
      candidates,
      advice,
      adviceKey: matchKey(advice.choice.match, all),
      refused: designs.value.refused,
      networks: matchLNetwork(antenna_ohm, feed.design_MHz, main.impedance_ohm, { coilQ, capacitorQ }),
    },
  };
}

/** The candidate that goes by a key; undefined when it cannot be made for the feedpoint as it now is. */
export const matchNamed = ({ candidates }: RoomMatches, key: string | undefined) =>
  key === undefined ? undefined : candidates.find((one) => one.key === key);

/** A match's SWR against the wanted impedance at every point that is drawn. */
export function matchCurve({ readout }: KeyedMatch, matches: RoomMatches, feed: BandFeed) {
  const { curve } = assessMatch(readout.match, { ...matches.request, feed: feed.drawn });
  return { frequency_MHz: curve.frequency_MHz, value: curve.swr };
}
