import type { Complex, ElementBase } from "../../contract.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import type { BestFigures } from "./BestPicture.ts";
import type { BestRequest } from "./BestRequest.ts";
import type { BestChart } from "./bestCharts.ts";
import { gainsOf, worstSwr } from "./bestReader.ts";
import { cutTo, type Lengths, lengthsAt, placeOf, sidesOf } from "./bestSpace.ts";
import type { Candidate } from "./Candidate.ts";
import { MOST_SHOWN } from "./checkBestRequest.ts";
import { climb } from "./climb.ts";
import { findFront } from "./findFront.ts";
import { rankFronts } from "./rankFronts.ts";
import { costsOf, scoreOf, tradedBy } from "./scoreOf.ts";
import { spreadOver } from "./spreadOver.ts";
import { wireInPlan } from "./wireInPlan.ts";
import { coilBase } from "./withBestDesign.ts";

const SIZE = 60;
const ROUNDS = 40;

export interface BestFound {
  readonly lengths: Lengths;
  readonly figures: BestFigures;
  readonly impedance_ohm: Complex;
}

/**
 * Searches the charts for the trade-off front: a genetic search over lengths, spacing and coil, then from its best by each
 * figure alone and by the score a climb to the very top. Wire and SWR are rules; the other bounds are walls.
 *
 * @returns the whole front, and those to show: the best by score first, cut to the millimetre
 */
export function searchBest(
  request: BestRequest,
  charts: readonly BestChart[],
  start: Lengths,
): { readonly front: readonly BestFound[]; readonly shown: readonly BestFound[] } {
  const { weights, bounds, coilQ, seed } = request;
  const sides = sidesOf(bounds);
  const traded = tradedBy(weights);
  const read = chartReader(request, charts);
  const fixed_m = wireInPlan(request.plan) - start.driven_m - start.reflector_m;
  const part = (value: number, most: number | undefined) =>
    most === undefined ? 0 : Math.max(0, value / most - 1 - 1e-12);
  /** By how large a part rules are broken. */
  const over = ({ driven_m, reflector_m }: Lengths, { swr }: BestFigures) =>
    part(fixed_m + driven_m + reflector_m, bounds.wire_m) + part(swr, bounds.swr);

  const found = (at: readonly number[]): BestFound => {
    const lengths = lengthsAt(at);
    return { lengths, ...read(lengths, coilBase(lengths.coil_ohm, coilQ)) };
  };
  const judge = (at: readonly number[]): Omit<Candidate, "at"> => {
    const { lengths, figures } = found(at);
    return { costs: costsOf(figures, traded), excess: over(lengths, figures) };
  };
  const record = findFront({ bounds: sides, judge, starts: [placeOf(start)], size: SIZE, rounds: ROUNDS, seed });
  if (record.length === 0) return { front: [], shown: [] };

  // Tops by the score and by each figure alone; figures are known by the costs, and need not be read again.
  const byScore = (figures: BestFigures) => scoreOf(figures, weights);
  const heights = [byScore, ...traded.map((_, c) => (figures: BestFigures) => -costsOf(figures, traded)[c]!)];
  const bests = [
    best(record, ({ at }) => byScore(found(at).figures)),
    ...traded.map((_, c) => best(record, ({ costs }) => -costs[c]!)),
  ];
  const tops = heights.map((height, h) => {
    const within = (at: readonly number[]) => {
      const { lengths, figures } = found(at);
      return over(lengths, figures) > 0 ? Number.NEGATIVE_INFINITY : height(figures);
    };
    return cutTo(climb(within, bests[h]!.at, sides), sides);
  });
  const candidates = [...tops, ...record.map(({ at }) => at)].map((at): Candidate => ({ at, ...judge(at) }));
  const standing = candidates.filter(({ excess }) => excess === 0);
  const front = (rankFronts(standing)[0] ?? []).map((i) => standing[i]!);
  const pick = best(front, ({ at }) => byScore(found(at).figures));
  const chosen = spreadOver(
    front.map(({ costs }) => costs),
    request.shown ?? MOST_SHOWN,
    [front.indexOf(pick)],
  );
  const shown = new Map(chosen.map((i) => cutTo(front[i]!.at, sides)).map((at) => [at.join(), found(at)]));
  return { front: front.map(({ at }) => found(at)), shown: [...shown.values()] };
}

/** The one that is highest; the first of equals. */
function best<T>(all: readonly T[], height: (one: T) => number): T {
  const heights = all.map(height);
  return all[heights.indexOf(heights.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY))] ?? all[0]!;
}

/** Figures anywhere within the bounds, off the charts. */
function chartReader(
  { plan, look }: BestRequest,
  charts: readonly BestChart[],
): (lengths: Lengths, base: ElementBase) => Pick<BestFound, "figures" | "impedance_ohm"> {
  const reflector = reflectorOf(plan)!;
  const decibels = (ratio: number) => 10 * Math.log10(ratio);
  const own_MHz = plan.frequency_MHz;
  const isRear = look.rearSector_deg > 0;
  return (lengths, base) => {
    const read = charts.map(({ frequency_MHz, sampleAt }) => {
      const bases = plan.elements.map((element) =>
        element.id === reflector.id ? { base: atFrequency(base, frequency_MHz / own_MHz) } : element,
      );
      return gainsOf(bases, sampleAt(lengths));
    });
    const { gains, impedance_ohm } = read[0]!;
    // Ahead, straight back, then the rest of the rear sector.
    const forward_dBi = decibels(gains[0]!);
    const figures: BestFigures = {
      forward_dBi,
      frontToBack_dB: forward_dBi - decibels(gains[1]!),
      frontToRear_dB: forward_dBi - decibels(isRear ? Math.max(...gains.subarray(1)) : gains[1]!),
      swr: worstSwr(read.map((one) => one.impedance_ohm)),
    };
    return { figures, impedance_ohm };
  };
}

/** A coil's reactance, and by its Q its resistance, in proportion to frequency. */
export function atFrequency(base: ElementBase, ratio: number): ElementBase {
  if (base.kind !== "loaded") return base;
  return { kind: "loaded", resistance_ohm: base.resistance_ohm * ratio, reactance_ohm: base.reactance_ohm * ratio };
}
