import { swr } from "../../readouts/swr.ts";
import { failed, ok, type Problem, type Result } from "../../result.ts";
import { assessMatch, type MatchReadout } from "./assessMatch.ts";
import { checkMatchRequest } from "./checkMatchRequest.ts";
import { feedAt } from "./feedAt.ts";
import type { Match, MatchKind } from "./Match.ts";
import type { MatchRequest } from "./MatchRequest.ts";
import { matchLNetwork } from "./matchLNetwork.ts";
import { matchQuarterWave } from "./matchQuarterWave.ts";
import { matchSeriesSection } from "./matchSeriesSection.ts";
import { matchShuntCoil } from "./matchShuntCoil.ts";
import { matchStub } from "./matchStub.ts";
import { matchTwelfthWave } from "./matchTwelfthWave.ts";

export interface MatchDesigns {
  /** Every match that can be made, "none" first, then in the order of `MatchKind`; each put back over the band. */
  readonly matches: readonly MatchReadout[];
  /** Every one that cannot, and why. */
  readonly refused: readonly { readonly kind: MatchKind; readonly problem: Problem }[];
}

/**
 * Designs every kind of match for an antenna's feed at one frequency and puts each back over its band.
 *
 * Values come from closed forms without loss at the design frequency; all that is read off afterwards (SWR, loss,
 * bandwidth, voltages) from `analyseLadder` with the loss of lines and the Q of parts.
 * Problems: those of `checkMatchRequest`. A kind that cannot match is no problem of the whole; it stands in `refused`.
 */
export function designMatches(candidate: MatchRequest): Result<MatchDesigns> {
  const checked = checkMatchRequest(candidate);
  if (!checked.ok) return checked;
  const { feed, design_MHz: f, wanted_ohm: z0, stock } = checked.value;
  const { coilQ, capacitorQ } = checked.value;
  const quality = { ...(coilQ !== undefined && { coilQ }), ...(capacitorQ !== undefined && { capacitorQ }) };
  const antenna = feedAt(feed, f);
  const found: Match[] = [];
  const refused: { kind: MatchKind; problem: Problem }[] = [];
  const take = (kind: MatchKind, result: Result<Match | readonly Match[]>) => {
    if (result.ok) found.push(...[result.value].flat());
    else for (const problem of result.problems) refused.push({ kind, problem });
  };
  const promisedSwr = swr(antenna.re, antenna.im, z0);
  take("none", ok({ kind: "none", name: "no match", ladder: [], promisedSwr, notes: [] }));
  take("shunt-coil", matchShuntCoil(antenna, f, z0, quality));
  const sections = stock.flatMap((line) => ([1, 2] as const).map((parallel) => ({ line, parallel })));
  // A section of the wanted impedance turns reflections about their aim and changes nothing.
  const others = sections.filter((s) => Math.abs(s.line.impedance_ohm / s.parallel / z0 - 1) > 1e-6);
  for (const { line, parallel } of others) take("quarter-wave", matchQuarterWave(antenna, f, z0, line, parallel));
  for (const { match } of matchLNetwork(antenna, f, z0, quality)) take("l-network", match);
  const main = stock.find((line) => Math.abs(line.impedance_ohm / z0 - 1) <= 1e-6);
  if (main) {
    for (const { line, parallel } of others)
      take("series-section", matchSeriesSection(antenna, f, z0, main, line, parallel));
    for (const { line, parallel } of others)
      take("twelfth-wave", matchTwelfthWave(antenna, f, z0, main, line, parallel));
    take("stub", matchStub(antenna, f, z0, main));
  } else {
    const message = `Matches along the line need a cable of the wanted ${z0} ohm, and none is in stock.`;
    for (const kind of ["series-section", "twelfth-wave", "stub"] as const)
      take(kind, failed({ code: "no-match", where: "stock", message }));
  }
  return ok({ matches: found.map((match) => assessMatch(match, checked.value)), refused });
}
