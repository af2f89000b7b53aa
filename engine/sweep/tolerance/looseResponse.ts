import type { Plan } from "../../contract.ts";
import type { ArraySample } from "../trial/arraySample.ts";
import { axisWeights } from "../trial/axisWeights.ts";
import type { SampleNumbers } from "../trial/SampleNumbers.ts";
import type { LooseAxis } from "./looseAxes.ts";

/** Part of what is looked at at which two axes are tried together, unless more is asked for. */
const CORNER = 0.25;

/** Port matrix and fields around a plan. */
export interface LooseResponse {
  /** Plans to be solved, the plan itself first. */
  readonly points: readonly Plan[];
  /**
   * The sample at one x an axis, made of those of `points` in their order.
   * @throws RangeError for another number of values or samples
   */
  at(x: readonly number[], samples: readonly ArraySample[]): SampleNumbers;
}

/**
 * A response around a plan from few solves: along each axis by itself the polynomial through four or five solves, plus, of
 * each two axes that are off, what a solve of both off at once adds to that,
 *
 *   R(x) = R₀ + Σ Dᵢ(xᵢ) + Σ uᵢuⱼ (R(aᵢ, aⱼ) − R₀ − Dᵢ(aᵢ) − Dⱼ(aⱼ)),   Dᵢ(x) = R(x alone) − R₀,   u = x/a,
 *
 * and with soil, on whose axis the plan has no place, the same from both its ends, straight between. Exact for what is
 * a polynomial of degree four in each and bilinear in two. Whoever uses it has to hold it against solves elsewhere.
 *
 * The expansion by order of joint effect: H. Rabitz and Ö. F. Alış, J. Math. Chem. 25 (1999) 197-233, from memory.
 */
export function looseResponse(plan: Plan, axes: readonly LooseAxis[]): LooseResponse {
  const points: Plan[] = [plan];
  const add = (point: Plan) => points.push(point) - 1;

  const lines = axes.map((axis) => {
    const isOnAxis = axis.from <= 0 && axis.what !== "soil";
    const nodes = isOnAxis
      ? [...new Set([axis.from, axis.from / 2, 0, axis.to / 2, axis.to])]
      : [0, 1 / 3, 2 / 3, 1].map((t) => axis.from + (axis.to - axis.from) * t);
    const indices = nodes.map((x) => (isOnAxis && x === 0 ? 0 : add(axis.shifted(plan, x))));
    const inward = (x: number) => (2 * (x - axis.from)) / (axis.to - axis.from) - 1;
    const weights = axis.to > axis.from ? axisWeights(nodes.map(inward)) : () => new Float64Array([1]);
    const corner = axis.what === "soil" ? 1 : Math.max(axis.limits.more, CORNER * axis.to);
    const isLoose = axis.limits.less > 0 || axis.limits.more > 0;
    return { axis, indices, weights: (x: number) => weights(inward(x)), corner, isLoose };
  });
  type Line = (typeof lines)[number];
  const pairs: { one: number; other: number; index: number; at: number }[] = [];
  lines.forEach((line, i) => {
    lines.forEach((second, j) => {
      if (j <= i || !line.isLoose || !second.isLoose) return;
      const ends = second.axis.what === "soil" ? [0, 1] : [second.corner];
      for (const at of ends)
        pairs.push({ one: i, other: j, at, index: add(second.axis.shifted(line.axis.shifted(plan, line.corner), at)) });
    });
  });

  /** Adds part·D(x) to weights over points. */
  const addLine = (total: Float64Array, { indices, weights }: Line, x: number, part: number) => {
    weights(x).forEach((weight, n) => {
      total[indices[n]!]! += part * weight;
    });
    total[0]! -= part;
  };
  const weightsAt = (x: readonly number[]): Float64Array => {
    const total = new Float64Array(points.length);
    total[0] = 1;
    lines.forEach((line, i) => {
      if (line.isLoose || x[i] !== 0) addLine(total, line, x[i]!, 1);
    });
    for (const { one, other, index, at } of pairs) {
      const [line, second] = [lines[one]!, lines[other]!];
      const isSoil = second.axis.what === "soil";
      const share = isSoil ? (at === 0 ? 1 - x[other]! : x[other]!) : x[other]! / second.corner;
      const part = (x[one]! / line.corner) * share;
      if (part === 0) continue;
      total[index]! += part;
      total[0]! -= part;
      addLine(total, line, line.corner, -part);
      addLine(total, second, at, -part);
    }
    return total;
  };
  return {
    points,
    at(x, samples) {
      if (x.length !== axes.length || samples.length !== points.length)
        throw new RangeError(
          `looseResponse: ${x.length} values, ${samples.length} samples; ${axes.length}, ${points.length}`,
        );
      const weights = weightsAt(x);
      const impedance_ohm = new Float64Array(samples[0]!.impedance_ohm.length);
      const fields = new Float64Array(samples[0]!.fields.length);
      weights.forEach((weight, s) => {
        if (weight === 0) return;
        const sample = samples[s]!;
        for (let i = 0; i < impedance_ohm.length; i++) impedance_ohm[i]! += weight * sample.impedance_ohm[i]!;
        for (let i = 0; i < fields.length; i++) fields[i]! += weight * sample.fields[i]!;
      });
      return { impedance_ohm, fields };
    },
  };
}
