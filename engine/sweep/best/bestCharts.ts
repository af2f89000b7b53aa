import type { Plan } from "../../contract.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { spacingOf } from "../../plan/edits/spacingOf.ts";
import { withElement } from "../../plan/edits/withElement.ts";
import { ok, type Result } from "../../result.ts";
import type { ArrayChart } from "../trial/ArrayChart.ts";
import type { Directions } from "../trial/arraySample.ts";
import type { ChartAxis } from "../trial/ChartAxis.ts";
import { chartStep } from "../trial/chartStep.ts";
import { pairAt } from "../trial/pairAt.ts";
import { spacingBreaks } from "../trial/spacingBreaks.ts";
import type { Known, TrialAsk } from "../trial/Trial.ts";
import { uprightCuts } from "../trial/uprightCuts.ts";
import type { BestRequest } from "./BestRequest.ts";
import { coarseAzimuths } from "./bestReader.ts";
import type { Lengths } from "./bestSpace.ts";
import { coilBase } from "./withBestDesign.ts";

/** Solves that the charts of all frequencies may take together. */
const MOST_SOLVES = 900;

/** Port matrix and fields anywhere within the bounds, at one frequency. */
export interface BestChart {
  readonly frequency_MHz: number;
  /** As interpolated, the coil not yet in. @throws RangeError outside the bounds */
  readonly sampleAt: (lengths: Lengths) => ReturnType<ArrayChart["sampleAt"]>;
}

export interface BestChartsStep {
  readonly asks: readonly TrialAsk[];
  /** The plan's frequency first; null until they are done. */
  readonly charts: readonly BestChart[] | null;
  readonly isAgreed: boolean;
  readonly solves: number;
  readonly part: number;
}

/** The plan's frequency, then the edges of the segment that differ from it. */
export function frequenciesOf({ plan, segment_MHz }: BestRequest): readonly number[] {
  return [...new Set([plan.frequency_MHz, segment_MHz.from, segment_MHz.to])];
}

/**
 * Charts over spacing, driven length and reflector length, one a frequency: at the plan's with fields ahead and behind, at the
 * segment's edges for the SWR. What the bounds hold fixed is no axis. The coil is no axis either: it is put in by algebra.
 */
export function bestCharts(request: BestRequest): (known: Known) => Result<BestChartsStep> {
  const { plan, bounds, look } = request;
  const keys = ["spacing_m", "driven_m", "reflector_m"] as const;
  const free = keys.filter((key) => bounds[key].most > bounds[key].least);
  const { least, most } = bounds.spacing_m;
  const axes = free.map((key): ChartAxis => {
    const range = { from: bounds[key].least, to: bounds[key].most };
    return key === "spacing_m" ? { ...range, breaks: spacingBreaks(plan, least, most) } : range;
  });
  const frequencies = frequenciesOf(request);
  const joined = joinedPlan(plan);
  const uprightSegments = uprightCuts(joined);
  const directions = frequencies.map(
    (_, i): Directions => ({
      elevations_deg: [look.pathElevation_deg],
      azimuths_deg: i === 0 ? coarseAzimuths(look.rearSector_deg) : [0, 180],
    }),
  );
  const askAt =
    (i: number) =>
    (place: readonly number[]): TrialAsk => {
      const value = (key: (typeof keys)[number]) =>
        free.includes(key) ? place[free.indexOf(key)]! : bounds[key].least;
      const changed = pairAt(joined, {
        spacing_m: value("spacing_m"),
        drivenHeight_m: value("driven_m"),
        reflectorHeight_m: value("reflector_m"),
      });
      return {
        plan: changed,
        frequency_MHz: frequencies[i]!,
        directions: directions[i]!,
        ...(uprightSegments && { uprightSegments }),
      };
    };
  const words = { spacing_m: "spacing", driven_m: "driven", reflector_m: "reflector" };
  const describe = (place: readonly number[]) =>
    free.map((key, axis) => `${words[key]} ${place[axis]!.toFixed(2)} m`).join(", ");
  // A request remembers the rounds it has been through.
  const requests = frequencies.map((_, i) => ({
    axes,
    askAt: askAt(i),
    describe,
    mostSolves: MOST_SOLVES / frequencies.length,
  }));

  return (known) => {
    const asks: TrialAsk[] = [];
    const charts: BestChart[] = [];
    let isAgreed = true;
    let solves = 0;
    let part = 0;
    for (const [i, frequency_MHz] of frequencies.entries()) {
      if (axes.length === 0) {
        const ask = askAt(i)([]);
        const answer = known(ask);
        if (answer && !answer.ok) return answer;
        if (answer) charts.push({ frequency_MHz, sampleAt: () => answer.value });
        else asks.push(ask);
        continue;
      }
      const step = chartStep(requests[i]!, known);
      if (!step.ok) return step;
      const { chart, error } = step.value;
      asks.push(...step.value.asks);
      isAgreed &&= error.isAgreed;
      solves += error.nodes + error.checks;
      part += step.value.part / frequencies.length;
      if (chart) charts.push({ frequency_MHz, sampleAt: (lengths) => chart.sampleAt(free.map((key) => lengths[key])) });
    }
    const isDone = asks.length === 0 && charts.length === frequencies.length;
    return ok({ asks, charts: isDone ? charts : null, isAgreed, solves, part: isDone ? 1 : part });
  };
}

/** The plan with its reflector joined, so that places differ in lengths and spacing only. */
function joinedPlan(plan: Plan): Plan {
  const reflector = reflectorOf(plan);
  if (!reflector) throw new RangeError("bestCharts: the plan has no reflector");
  return withElement(plan, reflector.id, (element) => ({ ...element, base: coilBase(0) }));
}

/** @throws RangeError without a pair */
export function lengthsOf(plan: Plan): Lengths {
  const reflector = reflectorOf(plan);
  const driven = plan.elements.find(({ base }) => base.kind === "fed");
  const spacing_m = spacingOf(plan);
  if (!reflector || !driven || spacing_m === undefined) throw new RangeError("lengthsOf: the plan has no reflector");
  const coil_ohm = reflector.base.kind === "loaded" ? reflector.base.reactance_ohm : 0;
  return { driven_m: driven.height_m, reflector_m: reflector.height_m, spacing_m, coil_ohm };
}
