import type { Plan } from "../contract.ts";
import { cx } from "../network/cx.ts";
import type { BenchReading, BenchState } from "../plan/PlanBench.ts";
import type { ArrayChart } from "../sweep/trial/ArrayChart.ts";
import type { BenchRoles } from "./benchRoles.ts";
import { type BaseMatrix, meterReading } from "./meterReading.ts";

/** What is fitted, in this order: length factor, series R and X of the driven, then of the reflector, then the mutual scale. */
export interface RefitParameters {
  readonly lengthFactor: readonly number[];
  readonly resistance_ohm: readonly number[];
  readonly reactance_ohm: readonly number[];
  readonly mutualScale: number;
}

/**
 * What is held likely before any reading: as cut within 2 %, ground within 20 ohm of the model's with 1 ohm of reactance,
 * mutual impedance within 5 %. Chosen, so that a single frequency still gives one answer; where readings say more
 * they win, and an estimate that rests on these is marked.
 */
const BEFORE = { lengthFactor: 0.02, resistance_ohm: 20, reactance_ohm: 1, mutualScale: 0.05 } as const;
/** How far the search may go. */
const RANGE = { lengthFactor: 0.06, resistance_ohm: 200, reactance_ohm: 200 } as const;
const MUTUAL = { least: 0.3, most: 3 } as const;

export interface RefitUnknown {
  readonly name: string;
  readonly start: number;
  /** Standard error before any reading. */
  readonly before: number;
  readonly least: number;
  readonly most: number;
}

/** The unknowns of a fit with so many elements (1 or 2), in order. */
export function refitUnknowns(elements: number): readonly RefitUnknown[] {
  const around = (name: string, start: number, key: keyof typeof RANGE): RefitUnknown => ({
    name,
    start,
    before: BEFORE[key],
    least: start - RANGE[key],
    most: start + RANGE[key],
  });
  const unknowns = ["driven", "reflector"]
    .slice(0, elements)
    .flatMap((of) => [
      around(`${of} length`, 1, "lengthFactor"),
      around(`${of} resistance`, 0, "resistance_ohm"),
      around(`${of} reactance`, 0, "reactance_ohm"),
    ]);
  return elements < 2 ? unknowns : [...unknowns, { name: "mutual", start: 1, before: BEFORE.mutualScale, ...MUTUAL }];
}

export function unpackParameters(values: Float64Array): RefitParameters {
  const elements = values.length >= 7 ? [0, 1] : [0];
  return {
    lengthFactor: elements.map((e) => values[3 * e]!),
    resistance_ohm: elements.map((e) => values[3 * e + 1]!),
    reactance_ohm: elements.map((e) => values[3 * e + 2]!),
    mutualScale: values.length >= 7 ? values[6]! : 1,
  };
}

/** Lengths of the model's chart held within it. */
export interface RefitChart {
  /** Axes: driven's length, reflector's length where there is one, frequency. */
  readonly chart: ArrayChart;
  readonly lengths_m: readonly { readonly from: number; readonly to: number }[];
}

/**
 * The matrix of bases over frequency at effective lengths, with what the parameters add: R + jX in series, and the
 * mutual impedance of the pair scaled.
 */
export function matrixAt(
  { chart, lengths_m }: RefitChart,
  roles: BenchRoles,
  cut_m: readonly number[],
  { lengthFactor, resistance_ohm, reactance_ohm, mutualScale }: RefitParameters,
): (frequency_MHz: number) => BaseMatrix {
  let fixed = chart;
  cut_m.forEach((length, e) => {
    const { from, to } = lengths_m[e]!;
    fixed = fixed.fix(Math.min(to, Math.max(from, length * lengthFactor[e]!)));
  });
  const role = roles.reflector === undefined ? [roles.driven] : [roles.driven, roles.reflector];
  return (f) => {
    const z = fixed.sampleAt([f]).impedance_ohm;
    const P = Math.round(Math.sqrt(z.length / 2));
    return Array.from({ length: P }, (_, i) =>
      Array.from({ length: P }, (_, j) => {
        const own = cx.of(z[2 * (i * P + j)]!, z[2 * (i * P + j) + 1]!);
        const e = role.indexOf(i);
        if (i === j) return e < 0 ? own : cx.add(own, cx.of(resistance_ohm[e]!, reactance_ohm[e]!));
        return e >= 0 && role.includes(j) ? cx.scale(own, mutualScale) : own;
      }),
    );
  };
}

/** A reading as the fit uses it. */
export interface RefitReading {
  readonly id: string;
  readonly state: BenchState;
  /** Driven, and reflector where there is one. */
  readonly cut_m: readonly number[];
  readonly points: BenchReading["points"];
}

/** A meter's own: half a percent of the impedance and 0.3 ohm, in R as in X. */
const METER_PART = 0.005;
const METER_OHM = 0.3;

/** Standard error of one part of a reading, with what the model's interpolation may be off by [ohm]. */
export function pointError_ohm(resistance_ohm: number, reactance_ohm: number, model_ohm: number): number {
  const own = METER_PART * Math.hypot(resistance_ohm, reactance_ohm);
  return Math.sqrt(own * own + METER_OHM * METER_OHM + model_ohm * model_ohm);
}

/** Differences of the readings from the model, R then X of each point [ohm]. */
export function misfits(
  model: RefitChart,
  plan: Plan,
  roles: BenchRoles,
  readings: readonly RefitReading[],
  parameters: RefitParameters,
): number[][] {
  return readings.map(({ cut_m, points, state }) => {
    const at = matrixAt(model, roles, cut_m, parameters);
    return points.flatMap(({ frequency_MHz, resistance_ohm, reactance_ohm }) => {
      const { impedance_ohm: z } = meterReading(plan, roles, at(frequency_MHz), state);
      return [resistance_ohm - z.re, reactance_ohm - z.im];
    });
  });
}
