import type { ElementPlan, Plan } from "../../contract.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { failed, type Note, ok, type Result } from "../../result.ts";
import { directionsOf } from "../trial/directionsOf.ts";
import { figuresReader } from "../trial/figuresReader.ts";
import { isPreview } from "../trial/isPreview.ts";
import type { Known, Trial, TrialAsk } from "../trial/Trial.ts";
import type { BestDesign, BestFigures, BestPicture } from "./BestPicture.ts";
import type { BestRequest } from "./BestRequest.ts";
import { bestCharts, frequenciesOf, lengthsOf } from "./bestCharts.ts";
import { worstSwr } from "./bestReader.ts";
import type { Candidate } from "./Candidate.ts";
import { checkBestRequest } from "./checkBestRequest.ts";
import { rankFronts } from "./rankFronts.ts";
import { costsOf, scoreOf, tradedBy } from "./scoreOf.ts";
import { atFrequency, type BestFound, searchBest } from "./searchBest.ts";
import { wireInPlan } from "./wireInPlan.ts";
import { withBestDesign } from "./withBestDesign.ts";

/** Share of the solves that goes into the charts, as progress is told. */
const CHARTS = 0.85;

/**
 * The best of a pair's lengths, spacing and coil by what the person weighs: not one answer but the trade-off front, within
 * the bounds. The front is searched on interpolations whose error was checked; a few designs spread over it are then
 * solved one by one, each at the plan's frequency and at the segment's edges, and every figure shown of a solved design is
 * that of its solve. The pick is the best of those by score, or the start where none is better.
 *
 * The same request gives the same answer. Problems: see `checkBestRequest`; those of the solves.
 */
export function bestTrial(candidate: BestRequest): Result<Trial<BestPicture>> {
  const checked = checkBestRequest(candidate);
  if (!checked.ok) return checked;
  const request = checked.value;
  const { plan, weights } = request;
  const traded = tradedBy(weights);
  const startLengths = lengthsOf(plan);
  const solver = designSolver(request);
  const charted = bestCharts(request);
  // What the charts give does not change once they are done.
  let searched: ReturnType<typeof searchBest> | undefined;

  return ok((known) => {
    const start = solver.solve(plan, known);
    const step = charted(known);
    if (!step.ok) return step;
    const { charts, solves } = step.value;
    if (!start.ok) return start;
    const startDesign: BestDesign | null =
      start.value.kind === "solved"
        ? {
            ...startLengths,
            wire_m: wireInPlan(plan),
            ...start.value.read,
            score: scoreOf(start.value.read.figures, weights),
            isSolved: true,
          }
        : null;
    const startAsks = start.value.kind === "solved" ? [] : start.value.asks;
    const shared = { kind: "best" as const, isPreview: isPreview(plan), traded };
    if (!charts || !startDesign) {
      const picture: BestPicture | null = startDesign && {
        ...shared,
        start: startDesign,
        front: [],
        dots: [],
        pick: startDesign,
        isStartBest: true,
        solves,
        notes: [],
      };
      return ok({ asks: [...startAsks, ...step.value.asks], picture, part: CHARTS * step.value.part });
    }

    searched ??= searchBest(request, charts, startLengths);
    const { front, shown } = searched;
    const asks: TrialAsk[] = [];
    const designs: { design: BestDesign; guess: BestFigures }[] = [];
    let refused = 0;
    for (const found of shown) {
      const changed = withBestDesign(plan, found.lengths, request.coilQ);
      const solved = solver.solve(changed, known);
      if (!solved.ok) {
        refused++;
        continue;
      }
      if (solved.value.kind === "asks") asks.push(...solved.value.asks);
      designs.push({ design: designOf(found, changed, solved.value, request), guess: found.figures });
    }
    if (shown.length > 0 && refused === shown.length) {
      const first = solver.solve(withBestDesign(plan, shown[0]!.lengths, request.coilQ), known);
      if (!first.ok) return first;
    }
    const isDone = asks.length === 0;
    const standing = isDone
      ? unbettered(
          designs.map(({ design }) => design),
          traded,
        )
      : designs.map(({ design }) => design);
    const sorted = standing.toSorted((a, b) => b.score - a.score);
    const best = sorted[0];
    const isStartBest = !best || !(best.score > startDesign.score);
    const picture: BestPicture = {
      ...shared,
      start: startDesign,
      front: sorted,
      dots: front.map(({ figures }) => figures),
      pick: isStartBest ? startDesign : best,
      isStartBest,
      ...(isDone && designs.length > 0 && { error: errorOf(designs) }),
      solves: solves + (1 + shown.length) * solver.perDesign,
      notes: notesOn(step.value.isAgreed, refused, front.length),
    };
    const part = isDone
      ? 1
      : CHARTS + ((1 - CHARTS) * designs.filter(({ design }) => design.isSolved).length) / shown.length;
    return ok({ asks, picture, part });
  });
}

interface Read {
  readonly figures: BestFigures;
  readonly impedance_ohm: BestDesign["impedance_ohm"];
}

type Solved =
  | { readonly kind: "solved"; readonly read: Read }
  | { readonly kind: "asks"; readonly asks: readonly TrialAsk[] };

/** Solves whole designs, base and all, at every frequency that counts. */
function designSolver(request: BestRequest) {
  const { plan: start, look } = request;
  const directions = directionsOf(look);
  const figuresAt = figuresReader(look, directions);
  const frequencies = frequenciesOf(request);
  const reflectorId = reflectorOf(start)!.id;
  const bases = ({ elements }: Plan, ratio: number): ElementPlan[] =>
    elements.map((element) =>
      element.id === reflectorId ? { ...element, base: atFrequency(element.base, ratio) } : element,
    );
  return {
    perDesign: frequencies.length,
    solve(plan: Plan, known: Known): Result<Solved> {
      const asks: TrialAsk[] = [];
      const read: ReturnType<typeof figuresAt>[] = [];
      for (const frequency_MHz of frequencies) {
        const ask = { plan, frequency_MHz, directions };
        const answer = known(ask);
        if (!answer) asks.push(ask);
        else if (!answer.ok) return answer;
        else read.push(figuresAt(bases(plan, frequency_MHz / plan.frequency_MHz), answer.value));
      }
      if (asks.length > 0) return ok({ kind: "asks", asks });
      const [own] = read;
      const { forward_dBi, frontToBack_dB, frontToRear_dB } = own!;
      const swr = worstSwr(read.map(({ feeds }) => feeds[0]!.impedance_ohm));
      const figures = { forward_dBi, frontToBack_dB, frontToRear_dB, swr };
      if (!Object.values(figures).some(Number.isNaN))
        return ok({ kind: "solved", read: { figures, impedance_ohm: own!.feeds[0]!.impedance_ohm } });
      return failed({
        code: "no-answer",
        where: "plan",
        message: "The currents of this design could not be found: its figures are not numbers.",
      });
    },
  };
}

function designOf(found: BestFound, plan: Plan, solved: Solved, { weights }: BestRequest): BestDesign {
  const { figures, impedance_ohm } = solved.kind === "solved" ? solved.read : found;
  return {
    ...found.lengths,
    wire_m: wireInPlan(plan),
    figures,
    impedance_ohm,
    score: scoreOf(figures, weights),
    isSolved: solved.kind === "solved",
  };
}

/** Solved figures differ a little from those the front was found by: what turns out bettered goes. */
function unbettered(designs: readonly BestDesign[], traded: readonly (keyof BestFigures)[]): readonly BestDesign[] {
  const candidates = designs.map(({ figures }): Candidate => ({ at: [], costs: costsOf(figures, traded), excess: 0 }));
  return (rankFronts(candidates)[0] ?? []).map((i) => designs[i]!);
}

function errorOf(designs: readonly { design: BestDesign; guess: BestFigures }[]): NonNullable<BestPicture["error"]> {
  const worst = (key: keyof BestFigures) =>
    Math.max(...designs.map(({ design, guess }) => Math.abs(design.figures[key] - guess[key])));
  return { forward_dB: worst("forward_dBi"), frontToBack_dB: worst("frontToBack_dB"), swr: worst("swr") };
}

function notesOn(isAgreed: boolean, refused: number, found: number): Note[] {
  const notes: Note[] = [];
  if (!isAgreed)
    notes.push({
      code: "rough-chart",
      message:
        "Between its solves the search is rougher than wanted; narrower bounds help. What is shown as solved is not touched by that.",
    });
  if (refused > 0)
    notes.push({
      code: "designs-refused",
      message: `${refused} designs found could not be solved and are left out.`,
      measured: refused,
    });
  if (found === 0)
    notes.push({
      code: "nothing-within",
      message: "No design that keeps to the wire and the SWR was found within the bounds.",
    });
  return notes;
}
