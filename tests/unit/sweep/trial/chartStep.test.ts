import { describe, expect, test, vi } from "vitest";
import type { ArraySample, Plan, Result, TrialAsk } from "../../../../engine/index.ts";
import { ok } from "../../../../engine/result.ts";
import { arrayChart } from "../../../../engine/sweep/trial/ArrayChart.ts";
import { askKey } from "../../../../engine/sweep/trial/askKey.ts";
import { axisWeights } from "../../../../engine/sweep/trial/axisWeights.ts";
import { axisPieces, inward, outward } from "../../../../engine/sweep/trial/ChartAxis.ts";
import { type ChartRequest, type ChartStep, chartStep } from "../../../../engine/sweep/trial/chartStep.ts";
import { compareSamples } from "../../../../engine/sweep/trial/compareSamples.ts";
import { lejaPoints } from "../../../../engine/sweep/trial/lejaPoints.ts";
import { pairAt } from "../../../../engine/sweep/trial/pairAt.ts";
import { okValue } from "../../../support/okValue.ts";
import { trialPair } from "../../../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

const pair = trialPair({ ground: { kind: "perfect" } });
const directions = { elevations_deg: [5], azimuths_deg: [0, 180] };

/**
 * An array after a formula, so that its every place is known: self-impedances that bend with length, a mutual one that turns and
 * fades with distance, fields that turn with the place; `jump_m` lifts the second one's where it stands farther.
 */
function formula(spacing_m: number, height_m: number, jump_m = Number.POSITIVE_INFINITY): ArraySample {
  const k = 0.212;
  const self = [36 + 3 * (height_m - 7.6) + (spacing_m >= jump_m ? 9 : 0), 45 * Math.tan(0.2 * (height_m - 7.4))];
  const size = 40 / (1 + k * spacing_m);
  const mutual = [size * Math.cos(k * spacing_m), -size * Math.sin(k * spacing_m)];
  const turned = (way: number) => [8 * Math.cos(k * spacing_m), -way * 8 * Math.sin(k * spacing_m), 0, 0];
  return {
    frequency_MHz: 10.12,
    impedance_ohm: [36, -2, ...mutual, ...mutual, ...self] as number[],
    fields: [8, 0, 0, 0, 8, 0, 0, 0, ...turned(1), ...turned(-1)],
    notes: [],
  };
}

const request = (breaks: readonly (readonly [number, number])[] = [], mostSolves?: number): ChartRequest => ({
  axes: [
    { from: 1.5, to: 14, breaks },
    { from: 7, to: 8.2 },
  ],
  askAt: ([spacing_m, reflectorHeight_m]) => ({
    plan: pairAt(pair, { spacing_m: spacing_m!, reflectorHeight_m: reflectorHeight_m! }),
    frequency_MHz: 10.12,
    directions,
  }),
  ...(mostSolves !== undefined && { mostSolves }),
});
const placeOf = (plan: Plan) => [-plan.elements[1]!.forward_m, plan.elements[1]!.height_m] as const;

function drive(chartRequest: ChartRequest, jump_m?: number): ChartStep & { readonly solved: readonly TrialAsk[] } {
  const kept = new Map<string, Result<ArraySample>>();
  const solved: TrialAsk[] = [];
  for (;;) {
    const step = okValue(chartStep(chartRequest, (ask) => kept.get(askKey(ask))));
    if (step.asks.length === 0) return { ...step, solved };
    for (const ask of step.asks) {
      expect(kept.has(askKey(ask)), "asked twice").toBe(false);
      kept.set(askKey(ask), ok(formula(...placeOf(ask.plan), jump_m)));
      solved.push(ask);
    }
  }
}

/** Largest difference from the formula over a grid that avoids nodes. */
function farthest({ chart, error }: ChartStep, jump_m?: number) {
  let ohm = 0;
  let behind = 0;
  for (let i = 0; i < 23; i++)
    for (let j = 0; j < 11; j++) {
      const place = [1.5 + (12.5 * (i + 0.31)) / 23, 7 + (1.2 * (j + 0.43)) / 11] as const;
      const off = compareSamples(
        pair.elements,
        chart!.sampleAt(place),
        formula(...place, jump_m),
        directions,
        error.goal,
      );
      ohm = Math.max(ohm, off.error_ohm);
      behind = Math.max(behind, off.errorBehind);
    }
  return { ohm, behind };
}

describe("chartStep", () => {
  test("agrees after some dozens of solves, and lies everywhere within twice the error it states", () => {
    const step = drive(request());
    expect(step.error.isAgreed).toBe(true);
    expect(step.error.error_ohm).toBeLessThan(0.3);
    expect(step.error.errorBehind).toBeLessThan(0.005);
    expect(step.error.checks).toBeGreaterThanOrEqual(4);
    expect(step.solved).toHaveLength(step.error.nodes + step.error.checks);
    expect(step.solved.length).toBeLessThan(60);
    const off = farthest(step);
    expect(off.ohm).toBeLessThanOrEqual(2 * step.error.error_ohm);
    expect(off.behind).toBeLessThanOrEqual(2 * step.error.errorBehind);
    // No rounding: nodes are few.
    expect(off.ohm).toBeGreaterThan(1e-6);
  });

  test("a jump that it is told of costs nothing; one that it is not shows in the error, and the cap ends it", () => {
    const told = drive(request([[6.999, 7]]), 7);
    expect(told.error.isAgreed).toBe(true);
    expect(farthest(told, 7).ohm).toBeLessThanOrEqual(2 * told.error.error_ohm);
    const untold = drive(request([], 80), 7);
    expect(untold.error.isAgreed).toBe(false);
    expect(untold.error.nodes).toBeLessThanOrEqual(80);
    expect(untold.error.error_ohm).toBeGreaterThan(0.3);
  });

  test("a first picture comes from sixteen solves, and says that nothing has checked it", () => {
    const step = okValue(chartStep(request(), () => undefined));
    expect(step.chart).toBeNull();
    const nodes = new Map(step.asks.slice(0, 16).map((ask) => [askKey(ask), ok(formula(...placeOf(ask.plan)))]));
    const next = okValue(chartStep(request(), (ask) => nodes.get(askKey(ask))));
    expect(next.chart).not.toBeNull();
    expect(next.error).toMatchObject({ nodes: 16, checks: 0, isAgreed: false });
    expect(next.part).toBeGreaterThan(step.part);
    expect(next.part).toBeLessThan(1);
  });

  test("a solve that is refused ends it with the problem and the place", () => {
    const refused = { ok: false, problems: [{ code: "x", where: "elements[1]", message: "It touches." }] } as const;
    const described = { ...request(), describe: ([s]: readonly number[]) => `spacing ${s!.toFixed(1)} m` };
    const step = chartStep(described, (ask) =>
      placeOf(ask.plan)[0] > 10 ? refused : ok(formula(...placeOf(ask.plan))),
    );
    expect(step.ok ? [] : step.problems).toEqual([
      { ...refused.problems[0], message: "At spacing 14.0 m: It touches." },
    ]);
  });
});

test("Leja's points begin with the ends and the middle, stay apart, and fill the interval as Chebyshev's do", () => {
  expect(lejaPoints(3)).toEqual([-1, 1, 0]);
  // The point between −1 and 1 where |t(t² − 1)| is largest: t² = 1/3.
  expect(Math.abs(lejaPoints(4)[3]!)).toBeCloseTo(1 / Math.sqrt(3), 4);
  const many = lejaPoints(40).toSorted((a, b) => a - b);
  // Half of Chebyshev's points lie within cos 45° of the middle.
  const inner = many.filter((t) => Math.abs(t) < Math.SQRT1_2).length;
  expect(inner).toBeGreaterThanOrEqual(18);
  expect(inner).toBeLessThanOrEqual(22);
  expect(Math.min(...many.slice(1).map((t, i) => t - many[i]!))).toBeGreaterThan(1e-3);
  expect(() => lejaPoints(61)).toThrow(RangeError);
});

test("weights of n nodes make any polynomial of degree n − 1, and one of them is 1 at its node", () => {
  const nodes = lejaPoints(6);
  const weigh = axisWeights(nodes);
  const polynomial = (t: number) => 2 - t + 4 * t ** 3 - 3 * t ** 5;
  for (const t of [-0.93, -0.2, 0.111, 0.84]) {
    const sum = nodes.reduce((all, node, i) => all + weigh(t)[i]! * polynomial(node), 0);
    expect(sum).toBeCloseTo(polynomial(t), 12);
  }
  expect(Array.from(weigh(nodes[4]!))).toEqual([0, 0, 0, 0, 1, 0]);
});

test("an axis falls into its pieces; one too short for nodes is answered by its neighbour's end", () => {
  const pieces = axisPieces({
    from: 1,
    to: 11,
    breaks: [
      [0.5, 0.6],
      [4, 4.02],
    ],
  });
  expect(pieces).toEqual([
    { from: 1, to: 4, low: 1, high: 4 },
    { from: 4, to: 11, low: 4.02, high: 11 },
  ]);
  const short = axisPieces({ from: 1, to: 11, breaks: [[10.99, 10.995]] });
  expect(short).toEqual([{ from: 1, to: 11, low: 1, high: 10.99 }]);
  expect(inward(short[0]!, 10.999)).toBe(1);
  expect([-1, 1].map((t) => outward(pieces[1]!, t))).toEqual([4.02, 11]);
  expect(outward(pieces[1]!, inward(pieces[1]!, 5.5))).toBeCloseTo(5.5, 14);
  expect(() => axisPieces({ from: 2, to: 2 })).toThrow(RangeError);
});

test("a chart read at once, axis by axis, or for some of its fields says the same, and nothing outside", () => {
  const { chart } = drive(request([[6.999, 7]]), 7);
  for (const place of [
    [2.3, 7.7],
    [6.9995, 7.1],
    [13.9, 8.2],
  ] as const) {
    const whole = chart!.sampleAt(place);
    const fixed = chart!.fix(place[0]).sampleAt([place[1]]);
    expect(Array.from(fixed.impedance_ohm)).toEqual(Array.from(whole.impedance_ohm));
    const some = chart!.pick([9, 2, 12]).sampleAt(place);
    expect(Array.from(some.impedance_ohm)).toEqual(Array.from(whole.impedance_ohm));
    expect(Array.from(some.fields)).toEqual([9, 2, 12].map((i) => whole.fields[i]));
  }
  expect(() => chart!.sampleAt([1.4, 7.5])).toThrow(RangeError);
  expect(() => chart!.sampleAt([2])).toThrow(RangeError);
  expect(() => chart!.fix(14.1)).toThrow(RangeError);
  expect(arrayChart([])).toBeDefined();
});
