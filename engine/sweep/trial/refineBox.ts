import { failed, ok, type Problem, type Result } from "../../result.ts";
import { arrayChart, type ChartBox } from "./ArrayChart.ts";
import type { ArraySample, Directions } from "./arraySample.ts";
import { axisWeights } from "./axisWeights.ts";
import { type AxisPiece, outward } from "./ChartAxis.ts";
import type { ChartGoal } from "./ChartError.ts";
import type { ChartRequest } from "./chartStep.ts";
import { combinations } from "./combinations.ts";
import { compareSamples, type SampleError } from "./compareSamples.ts";
import { farthestPlace } from "./farthestPlace.ts";
import { fieldPlaces } from "./fieldPlaces.ts";
import { indexOfMost } from "./indexOfMost.ts";
import { lejaPoints } from "./lejaPoints.ts";
import type { Known, TrialAsk } from "./Trial.ts";

/** Nodes on each axis to begin with: the first picture. */
const FEWEST = 4;
const MOST_ON_AXIS = 30;
/** So many goals off, one point more will hardly do; nor near a resonance, where the last checks are. Rounds cost time of their own. */
const FAR = 3;
const VERY_FAR = 9;
/** An axis that has come so far closes in slowly: each point gains little. */
const MANY = 10;
/** Azimuths by which the place of the last checks is found. */
const SOME = 6;

/** How far a box has come. */
export interface BoxRound {
  /** Solves it needs next. */
  readonly asks: readonly TrialAsk[];
  /** The tensor through the nodes of the last round that was complete. */
  readonly box: ChartBox | null;
  readonly nodes: number;
  /** What its checks were off by. */
  readonly checks: readonly SampleError[];
  readonly solved: number;
  /** Solves that it will take, as a rule. */
  readonly expected: number;
}

/** A place −1..1 on each axis, beside the nodes, and the axis it puts to the test; absent: whichever weighs most there. */
interface Probe {
  readonly place: readonly number[];
  readonly axis?: number;
}

type Answer = ArraySample | TrialAsk | undefined;
const isSample = (answer: Answer): answer is ArraySample => answer !== undefined && "fields" in answer;
const isAsk = (answer: Answer): answer is TrialAsk => answer !== undefined && "plan" in answer;

/** How far a box has come: rounds that are over are not gone through again. */
export interface BoxState {
  /** Nodes on each axis of the round at hand. */
  readonly counts: number[];
  /** Samples by their place. */
  readonly answered: Map<string, ArraySample>;
  /** Everything solved beside the nodes of its round: a check as long as it is none of later ones. */
  readonly beside: Map<string, readonly number[]>;
  /** Of the last round whose nodes were complete. */
  box: ChartBox | null;
  boxCounts: string;
  checks: readonly SampleError[];
  /** Places of the last checks of the round at hand, once they are known. */
  farthest: readonly Probe[] | null;
  isDone: boolean;
}

export function newBox(axes: number): BoxState {
  return {
    counts: new Array<number>(axes).fill(FEWEST),
    answered: new Map(),
    beside: new Map(),
    box: null,
    boxCounts: "",
    checks: [],
    farthest: null,
    isDone: false,
  };
}

/**
 * Goes through the rounds of one box as far as what is known carries; see `chartStep` for what a round is.
 *
 * @param state what earlier calls came to; changed
 * @param most nodes
 */
export function refineBox(
  { askAt, describe }: ChartRequest,
  pieces: readonly AxisPiece[],
  state: BoxState,
  goal: ChartGoal,
  most: number,
  known: Known,
): Result<BoxRound> {
  const { answered, beside, counts } = state;
  const problems: Problem[] = [];
  const valuesAt = (place: readonly number[]) => place.map((t, axis) => outward(pieces[axis]!, t));
  const answerAt = (place: readonly number[]): Answer => {
    const key = place.join();
    const before = answered.get(key);
    if (before) return before;
    const ask = askAt(valuesAt(place));
    const answer = known(ask);
    if (!answer) return ask;
    if (answer.ok) {
      answered.set(key, answer.value);
      return answer.value;
    }
    // One place is told of: at others it is mostly the same.
    if (problems.length === 0)
      problems.push(
        ...answer.problems.map((problem) =>
          describe ? { ...problem, message: `At ${describe(valuesAt(place))}: ${problem.message}` } : problem,
        ),
      );
    return undefined;
  };

  const { plan, directions } = askAt(pieces.map((piece) => piece.low));
  const compare = (box: ChartBox, place: readonly number[], sample: ArraySample) =>
    compareSamples(plan.elements, arrayChart([box]).sampleAt(valuesAt(place)), sample, directions, goal);
  const thin = thinned(directions);
  const thinPlaces = fieldPlaces(directions, thin, plan.elements.length);
  const ended = (asks: readonly TrialAsk[]): Result<BoxRound> =>
    problems.length > 0
      ? failed(...problems)
      : ok({
          asks,
          box: state.box,
          nodes: state.box ? state.box.axes.reduce((size, axis) => size * axis.nodes, 1) : 0,
          checks: state.checks,
          solved: answered.size,
          // As a rule two points more on every axis than there are.
          expected: counts.reduce((size, n) => size * Math.max(n, FEWEST + 2), 1),
        });

  while (!state.isDone) {
    const places = combinations(counts.map((n) => lejaPoints(n)));
    const beyond = probesOf(counts);
    const answers = places.map(answerAt);
    const asks = [...answers, ...beyond.map(({ place }) => answerAt(place))].filter(isAsk);
    if (problems.length > 0 || answers.some(isAsk)) return ended(asks);
    const samples = answers.filter(isSample);
    if (state.boxCounts !== counts.join()) {
      state.boxCounts = counts.join();
      state.box = boxOf(pieces, counts, samples);
      for (const place of places) beside.delete(place.join());
    }
    const current = state.box!;
    const check = () => {
      state.checks = [...beside.values()].map((place) => compare(current, place, answered.get(place.join())!));
    };
    if (asks.length > 0) {
      check();
      return ended(asks);
    }
    /** How much a chart with a point fewer on one axis differs at a place, in goals. */
    const whole = arrayChart([current]).pick(thinPlaces);
    const differences = counts.map((n, axis) => {
      const last = lejaPoints(n).at(-1);
      const fewer = arrayChart([
        boxOf(
          pieces,
          counts.with(axis, n - 1),
          samples.filter((_, i) => places[i]![axis] !== last),
        ),
      ]).pick(thinPlaces);
      return (place: readonly number[]) => {
        const values = valuesAt(place);
        return compareSamples(plan.elements, fewer.sampleAt(values), whole.sampleAt(values), thin, goal).inGoals;
      };
    });
    const grown = [...counts];
    const test = (probes: readonly Probe[], step: 1 | 2 = 1): boolean => {
      let isAgreed = true;
      for (const { place, axis } of probes) {
        beside.set(place.join(), place);
        const { inGoals } = compare(current, place, answered.get(place.join())!);
        if (inGoals <= 1) continue;
        isAgreed = false;
        const at = axis ?? indexOfMost(differences.map((difference) => difference(place)));
        grown[at] = Math.max(grown[at]!, counts[at]! + pointsMore(inGoals, counts, at, step));
      }
      return isAgreed;
    };
    let isAgreed = test(beyond);
    if (isAgreed) {
      state.farthest ??= differences.map((difference) => ({ place: farthestPlace(counts.length, difference) }));
      const last = state.farthest.map(({ place }) => answerAt(place)).filter(isAsk);
      if (last.length > 0 || problems.length > 0) {
        check();
        return ended(last);
      }
      isAgreed = test(state.farthest, 2) && test([...beside.values()].map((place) => ({ place })));
    }
    check();
    state.farthest = null;
    if (isAgreed || grown.reduce((size, n) => size * n, 1) > most || grown.some((n) => n > MOST_ON_AXIS))
      state.isDone = true;
    else
      grown.forEach((n, axis) => {
        counts[axis] = n;
      });
  }
  return ended([]);
}

/**
 * Points that an axis is given where a check is off. On one or two axes a point costs few solves, and two or three at once
 * spare rounds (of four to eighteen rounds on nine maps a third fell away, and some of the solves); on more axes it costs many.
 */
function pointsMore(inGoals: number, counts: readonly number[], axis: number, step: 1 | 2): number {
  if (counts.length > 2) return inGoals > FAR ? 2 : step;
  return inGoals > VERY_FAR || counts[axis]! > MANY ? 3 : 2;
}

/** Some of the directions, the first of each kind among them: enough to find a place by. */
function thinned({ elevations_deg, azimuths_deg }: Directions): Directions {
  const every = Math.ceil(azimuths_deg.length / SOME);
  return { elevations_deg: elevations_deg.slice(0, 1), azimuths_deg: azimuths_deg.filter((_, i) => i % every === 0) };
}

/** Places beside the nodes: the next Leja points of one axis with the others at an end and at the middle, and of all. */
function probesOf(counts: readonly number[]): readonly Probe[] {
  const next = (n: number, axis: number) => lejaPoints(counts[axis]! + n).at(-1)!;
  if (counts.length === 1) return [1, 2].map((n) => ({ place: [next(n, 0)], axis: 0 }));
  const along = counts.flatMap((_, axis) =>
    [-1, 0, 1].map((other) => ({ place: counts.map((_, i) => (i === axis ? next(1, i) : other)), axis })),
  );
  return [...along, ...[1, 2].map((n) => ({ place: counts.map((_, i) => next(n, i)) }))];
}

function boxOf(pieces: readonly AxisPiece[], counts: readonly number[], samples: readonly ArraySample[]): ChartBox {
  const impedances = samples[0]!.impedance_ohm.length;
  const size = impedances + samples[0]!.fields.length;
  const values = new Float64Array(size * samples.length);
  samples.forEach((sample, i) => {
    values.set(sample.impedance_ohm, i * size);
    values.set(sample.fields, i * size + impedances);
  });
  return {
    axes: pieces.map((piece, axis) => ({
      piece,
      nodes: counts[axis]!,
      weightsAt: axisWeights(lejaPoints(counts[axis]!)),
    })),
    values,
    impedances,
  };
}
