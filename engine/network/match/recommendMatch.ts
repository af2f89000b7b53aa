import type { Note } from "../../result.ts";
import type { MatchReadout } from "./assessMatch.ts";
import type { MatchKind } from "./Match.ts";

export interface MatchAdvice {
  readonly choice: MatchReadout;
  readonly isBandHeld: boolean;
  /** Why this one, in a sentence or two. */
  readonly reason: string;
  readonly notes: readonly Note[];
}

/** From simple to involved: what has to be bought, cut and adjusted. A choice of this project, not a law. */
const effort: Record<MatchKind, number> = {
  none: 0,
  "shunt-coil": 1,
  "quarter-wave": 2,
  "l-network": 3,
  "twelfth-wave": 4,
  "series-section": 5,
  stub: 6,
};

/**
 * The simplest match that keeps the SWR within the limit over the whole band, and why. Among equally simple ones: one
 * that drains static, then the least loss at its worst. When none holds the band, the one with the lowest worst SWR.
 *
 * Simplicity: nothing; a coil across; a section of line; an L network; twelfth-wave; series section; stub; two lines in
 * parallel count half a step more, retrimming the element counts nothing, as it is to be trimmed anyway.
 *
 * @param matches as `designMatches` gives them, at least one
 * @throws RangeError when there are none
 */
export function recommendMatch(matches: readonly MatchReadout[], swrLimit: number): MatchAdvice {
  if (matches.length === 0) throw new RangeError("recommendMatch: no matches");
  const cost = ({ match }: MatchReadout) =>
    effort[match.kind] + (match.ladder.some((s) => s.kind === "line" && s.parallel === 2) ? 0.5 : 0);
  const simplest = (a: MatchReadout, b: MatchReadout) =>
    cost(a) - cost(b) ||
    Number(b.isStaticDrained) - Number(a.isStaticDrained) ||
    a.worstLoss_dB - b.worstLoss_dB ||
    a.worstSwr - b.worstSwr;
  const lowest = (a: MatchReadout, b: MatchReadout) => a.worstSwr - b.worstSwr || simplest(a, b);
  const holding = matches.filter((m) => m.isBandHeld).sort(simplest);
  const choice = holding[0] ?? [...matches].sort(lowest)[0]!;
  const { frequency_MHz } = choice.curve;
  const band = `from ${mhz(frequency_MHz[0]!)} to ${mhz(frequency_MHz.at(-1)!)} MHz`;
  const worst = `SWR ${choice.worstSwr.toFixed(2)} at its worst ${band}`;
  const none = matches.find((m) => m.match.kind === "none");
  const reason =
    holding.length === 0
      ? `Nothing here keeps SWR ${swrLimit} ${band}; ${choice.match.name} comes nearest, ${worst}.`
      : choice.match.kind === "none"
        ? `No match is needed: ${worst}, limit ${swrLimit}.`
        : `${none ? `Without a match the SWR reaches ${none.worstSwr.toFixed(2)}. ` : ""}The simplest that holds: ${choice.match.name}, ${worst}, limit ${swrLimit}.`;
  const notes: Note[] = [...choice.match.notes];
  if (!choice.isStaticDrained)
    notes.push({
      code: "no-static-drain",
      message: "The base has no path for direct current to ground through this; a drain choke or resistor is wanted.",
    });
  return { choice, isBandHeld: holding.length > 0, reason, notes };
}

const mhz = (f: number) => `${Number(f.toFixed(4))}`;
