import { failed, ok, type Problem, type Result } from "../../result.ts";
import { type ArrayChart, arrayChart, type ChartBox } from "./ArrayChart.ts";
import type { ArraySample } from "./arraySample.ts";
import { axisWeights } from "./axisWeights.ts";
import { type AxisPiece, axisPieces, type ChartAxis, outward } from "./ChartAxis.ts";
import type { ChartError, ChartGoal } from "./ChartError.ts";
import { compareSamples, type SampleError } from "./compareSamples.ts";
import { lejaPoints } from "./lejaPoints.ts";
import type { Known, TrialAsk } from "./Trial.ts";

export interface ChartRequest {
  /** Outermost first: `ArrayChart.fix` takes them in this order. */
  readonly axes: readonly ChartAxis[];
  /** The solve at a place: every place with elements in one order, and in one set of directions. */
  readonly askAt: (place: readonly number[]) => TrialAsk;
  /** A place in words, such as "spacing 8.4 m", for problems met there. */
  readonly describe?: (place: readonly number[]) => string;
  /** Absent: 0.3 ohm (or 1 %), 0.03 dB ahead, and the field behind to 0.005 of that ahead. */
  readonly goal?: ChartGoal;
  /** Solves after which it ends, agreed or not; absent: 400. Shared among the pieces between breaks. */
  readonly mostSolves?: number;
}

export interface ChartStep {
  /** Solves needed next; none: the chart is done. */
  readonly asks: readonly TrialAsk[];
  /** What the samples so far give; null until every piece has its first few. */
  readonly chart: ArrayChart | null;
  readonly error: ChartError;
  /** 0..1 */
  readonly part: number;
}

const GOAL: ChartGoal = { ohm: 0.3, dB: 0.03, behind: 0.005 };
const MOST = 400;
/** Nodes on each axis to begin with: the first picture. */
const FEWEST = 3;
const MOST_ON_AXIS = 30;
/** So many goals off, one point more will hardly do. */
const FAR = 8;

/**
 * An interpolation of port matrix and fields over any number of axes, from few solves: polynomials through the tensor of
 * Leja points on each axis. Both are smooth in spacing, lengths and frequency, since what resonates, the joined
 * reflector, is put in exactly by the algebra after it.
 *
 * After each round the chart is held against solves beside its nodes, where its error term is largest along each axis
 * (others at an end and at the middle) and along all of them; the axes on which it is off by more than the goal get a point more or two, and these
 * solves with it, until all agree or the cap is reached. What was solved beside the nodes of earlier rounds is a check as
 * well. The last differences are the chart's stated error.
 *
 * A pure step. Problems: those of the solves.
 */
export function chartStep(request: ChartRequest, known: Known): Result<ChartStep> {
  const goal = request.goal ?? GOAL;
  const boxes = product(request.axes.map((axis) => axisPieces(axis)));
  const most = (request.mostSolves ?? MOST) / boxes.length;
  const rounds: Round[] = [];
  const problems: Problem[] = [];
  for (const pieces of boxes) {
    const round = refine(request, pieces, goal, most, known);
    if (round.ok) rounds.push(round.value);
    else problems.push(...round.problems);
  }
  if (problems.length > 0) return failed(...problems);
  const asks = rounds.flatMap((round) => round.asks);
  const complete = rounds.flatMap(({ box }) => box ?? []);
  const worst = (of: (error: SampleError) => number) => Math.max(0, ...rounds.flatMap(({ checks }) => checks.map(of)));
  const solved = rounds.reduce((sum, round) => sum + round.solved, 0);
  const expected = rounds.reduce((sum, round) => sum + round.expected, 0);
  return ok({
    asks,
    chart: complete.length === boxes.length ? arrayChart(complete) : null,
    error: {
      nodes: rounds.reduce((sum, round) => sum + round.nodes, 0),
      checks: rounds.reduce((sum, round) => sum + round.checks.length, 0),
      error_ohm: worst((error) => error.error_ohm),
      error_dB: worst((error) => error.error_dB),
      errorBehind: worst((error) => error.errorBehind),
      goal,
      isAgreed: asks.length === 0 && worst((error) => error.inGoals) <= 1,
    },
    part: asks.length === 0 ? 1 : solved / Math.max(expected, solved + asks.length + 1),
  });
}

interface Round {
  readonly asks: readonly TrialAsk[];
  readonly box: ChartBox | null;
  readonly nodes: number;
  readonly checks: readonly SampleError[];
  readonly solved: number;
  readonly expected: number;
}

/** Goes through the rounds of one box as far as what is known carries. */
function refine(
  { askAt, describe }: ChartRequest,
  pieces: readonly AxisPiece[],
  goal: ChartGoal,
  most: number,
  known: Known,
): Result<Round> {
  const problems: Problem[] = [];
  const answered = new Map<string, ArraySample>();
  /** The sample at a place of the box, or its ask. */
  const sampleAt = (ts: readonly number[]): ArraySample | TrialAsk | undefined => {
    const key = ts.join();
    const before = answered.get(key);
    if (before) return before;
    const place = ts.map((t, axis) => outward(pieces[axis]!, t));
    const ask = askAt(place);
    const answer = known(ask);
    if (!answer) return ask;
    if (!answer.ok) {
      // One place is told of: at others it is mostly the same.
      if (problems.length === 0)
        problems.push(
          ...answer.problems.map((p) => ({
            ...p,
            message: describe ? `At ${describe(place)}: ${p.message}` : p.message,
          })),
        );
      return undefined;
    }
    answered.set(key, answer.value);
    return answer.value;
  };
  const isSample = (at: ArraySample | TrialAsk | undefined): at is ArraySample => at !== undefined && "fields" in at;
  const isAsk = (at: ArraySample | TrialAsk | undefined): at is TrialAsk => at !== undefined && "plan" in at;

  const counts = pieces.map(() => FEWEST);
  let box: ChartBox | null = null;
  let boxNodes = 0;
  let checks: readonly SampleError[] = [];
  /** Everything solved beside the nodes of its round: a check as long as it is none of later ones. */
  const beside = new Map<string, readonly number[]>();
  const elements = askAt(pieces.map((piece) => piece.low)).plan.elements;
  const ended = (asks: readonly TrialAsk[]): Result<Round> =>
    problems.length > 0
      ? failed(...problems)
      : ok({
          asks,
          box,
          nodes: boxNodes,
          checks,
          solved: answered.size,
          // As a rule two points more on every axis than there are.
          expected: counts.reduce((size, n) => size * Math.max(n, FEWEST + 2), 1),
        });

  for (;;) {
    const axes = counts.map((n) => lejaPoints(n));
    const places = product(axes);
    const probes = probesOf(counts);
    const samples = places.map(sampleAt);
    const probed = probes.map(({ place }) => sampleAt(place));
    const asks = [...samples, ...probed].filter(isAsk);
    if (problems.length > 0 || samples.some(isAsk)) return ended(asks);
    box = boxOf(pieces, axes, samples.filter(isSample));
    boxNodes = places.length;
    if (asks.length > 0) {
      checks = [];
      return ended(asks);
    }
    for (const { place } of probes) beside.set(place.join(), place);
    for (const place of places) beside.delete(place.join());
    const chart = arrayChart([box]);
    const check = (place: readonly number[]) => {
      const at = place.map((t, axis) => outward(pieces[axis]!, t));
      return compareSamples(elements, chart.sampleAt(at), answered.get(place.join())!, askAt(at).directions, goal);
    };
    checks = [...beside.values()].map(check);
    const off = counts.map((_, axis) =>
      Math.max(0, ...probes.filter((probe) => probe.axis === axis).map(({ place }) => check(place).inGoals)),
    );
    const all = Math.max(0, ...checks.map(({ inGoals }) => inGoals));
    if (all <= 1) return ended([]);
    // Where each axis by itself agrees and all together do not, the one that is nearest to its goal's edge.
    const worst = Math.max(...off);
    const grown = counts.map((n, axis) => {
      if (off[axis]! > FAR) return n + 2;
      return off[axis]! > 1 || (worst <= 1 && off[axis] === worst) ? n + 1 : n;
    });
    if (grown.reduce((size, n) => size * n, 1) > most || grown.some((n) => n > MOST_ON_AXIS)) return ended([]);
    grown.forEach((n, axis) => {
      counts[axis] = n;
    });
  }
}

/** Places beside the nodes: the next Leja point of one axis with the others at an end and at the middle, and of all. */
function probesOf(counts: readonly number[]): readonly { readonly place: readonly number[]; readonly axis?: number }[] {
  const next = (n: number, axis: number) => lejaPoints(counts[axis]! + n).at(-1)!;
  if (counts.length === 1) return [{ place: [next(1, 0)], axis: 0 }, { place: [next(2, 0)] }];
  const along = counts.flatMap((_, axis) =>
    [-1, 0, 1].map((other) => ({ place: counts.map((_, i) => (i === axis ? next(1, i) : other)), axis })),
  );
  return [...along, { place: counts.map((_, i) => next(1, i)) }, { place: counts.map((_, i) => next(2, i)) }];
}

function boxOf(
  pieces: readonly AxisPiece[],
  nodes: readonly (readonly number[])[],
  samples: readonly ArraySample[],
): ChartBox {
  const impedances = samples[0]!.impedance_ohm.length;
  const size = impedances + samples[0]!.fields.length;
  const values = new Float64Array(size * samples.length);
  samples.forEach((sample, i) => {
    values.set(sample.impedance_ohm, i * size);
    values.set(sample.fields, i * size + impedances);
  });
  return {
    axes: pieces.map((piece, axis) => ({ piece, weightsAt: axisWeights(nodes[axis]!) })),
    values,
    impedances,
  };
}

/** All combinations, the last list running fastest. */
function product<T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] {
  return lists.reduce<readonly (readonly T[])[]>(
    (found, list) => found.flatMap((start) => list.map((item) => [...start, item])),
    [[]],
  );
}
