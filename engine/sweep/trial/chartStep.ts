import { failed, ok, type Problem, type Result } from "../../result.ts";
import { type ArrayChart, arrayChart, type ChartBox } from "./ArrayChart.ts";
import { axisPieces, type ChartAxis } from "./ChartAxis.ts";
import type { ChartError, ChartGoal } from "./ChartError.ts";
import { combinations } from "./combinations.ts";
import type { SampleError } from "./compareSamples.ts";
import { type BoxRound, type BoxState, newBox, refineBox } from "./refineBox.ts";
import type { Known, TrialAsk } from "./Trial.ts";

export interface ChartRequest {
  /** Outermost first: `ArrayChart.fix` takes them in this order. */
  readonly axes: readonly ChartAxis[];
  /**
   * The solve at a place: every place with elements in one order and cut alike (`uprightCuts`), in one set of directions whose first
   * elevation is the path's and whose first azimuth is ahead.
   */
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
  /** What the samples so far give; null until every piece has its first few. The same object as long as nothing is added. */
  readonly chart: ArrayChart | null;
  readonly error: ChartError;
  /** 0..1 */
  readonly part: number;
}

const GOAL: ChartGoal = { ohm: 0.3, dB: 0.03, behind: 0.005 };
const MOST = 400;

/** What a request has come to, so that rounds that are over are not gone through at every step. */
const progress = new WeakMap<
  ChartRequest,
  {
    readonly boxes: readonly BoxState[];
    chart: { readonly boxes: readonly ChartBox[]; readonly chart: ArrayChart } | null;
  }
>();

/**
 * An interpolation of port matrix and fields over any number of axes, from few solves: polynomials through the tensor of
 * Leja points on each axis. Both are smooth in spacing, lengths and frequency, since what resonates, the joined
 * reflector, is put in exactly by the algebra after it.
 *
 * After each round the chart is held against solves beside its nodes: along each axis where its error term is largest,
 * the others at an end and at the middle, and along all of them. Axes on which it is off by more than the goal get one to
 * three points more, and these solves with it. Once all agree, one more solve for each axis is made where the chart with a point fewer
 * on it comes out most different (as near a resonance, where a small error counts most). What was solved beside
 * the nodes of earlier rounds is a check as well; the largest difference is the chart's stated error. A cap on solves
 * ends it, agreed or not.
 *
 * A pure step, but that a request object remembers what it was told: it takes less to go on with one than to begin with an
 * equal one, and the answer is the same. Problems: those of the solves.
 */
export function chartStep(request: ChartRequest, known: Known): Result<ChartStep> {
  const goal = request.goal ?? GOAL;
  const boxes = combinations(request.axes.map((axis) => axisPieces(axis)));
  const most = (request.mostSolves ?? MOST) / boxes.length;
  const kept = progress.get(request) ?? { boxes: boxes.map((pieces) => newBox(pieces.length)), chart: null };
  progress.set(request, kept);
  const rounds: BoxRound[] = [];
  const problems: Problem[] = [];
  for (const [i, pieces] of boxes.entries()) {
    const round = refineBox(request, pieces, kept.boxes[i]!, goal, most, known);
    if (round.ok) rounds.push(round.value);
    else problems.push(...round.problems);
  }
  if (problems.length > 0) return failed(...problems);
  const asks = rounds.flatMap((round) => round.asks);
  const complete = rounds.flatMap(({ box }) => box ?? []);
  if (complete.length === boxes.length && !complete.every((box, i) => box === kept.chart?.boxes[i]))
    kept.chart = { boxes: complete, chart: arrayChart(complete) };
  const worst = (of: (error: SampleError) => number) => Math.max(0, ...rounds.flatMap(({ checks }) => checks.map(of)));
  const solved = rounds.reduce((sum, round) => sum + round.solved, 0);
  const expected = rounds.reduce((sum, round) => sum + round.expected, 0);
  return ok({
    asks,
    chart: kept.chart?.chart ?? null,
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
