import { describe, expect, test, vi } from "vitest";
import {
  driveTrial,
  type Loose,
  type Plan,
  readPlan,
  solvePlan,
  type ToleranceFigures,
  type TolerancePicture,
  type ToleranceRequest,
  trialOf,
  withElementHeight,
  withSpacing,
} from "../../../../engine/index.ts";
import { bandOf } from "../../../../engine/sweep/tolerance/bandOf.ts";
import { drawErrors } from "../../../../engine/sweep/tolerance/drawErrors.ts";
import { looseAxes } from "../../../../engine/sweep/tolerance/looseAxes.ts";
import { toleranceTrial } from "../../../../engine/sweep/tolerance/toleranceTrial.ts";
import { okValue } from "../../../support/okValue.ts";
import { trialPair } from "../../../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

const average = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
const plan = trialPair({ ground: average, radials: 16 });
const none = { driven_m: 0, reflector_m: 0, spacing_m: 0, thickness: 0, heading_deg: 0 };
const request: ToleranceRequest = {
  kind: "tolerance",
  plan,
  look: { pathElevation_deg: 10, rearSector_deg: 120 },
  rungs_deg: [5, 10, 20],
  azimuthCutElevation_deg: 10,
  errors: { driven_m: 0.05, reflector_m: 0.05, spacing_m: 0.2, thickness: 0.1, heading_deg: 5 },
  soil: {
    dry: { relativePermittivity: 8, conductivity_SPerM: 0.002 },
    wet: { relativePermittivity: 20, conductivity_SPerM: 0.02 },
  },
  draws: 400,
  seed: 1,
};
const run = (change: Partial<ToleranceRequest> = {}) =>
  okValue(driveTrial(okValue(toleranceTrial({ ...request, ...change }))));
const of = ({ sensitivities }: TolerancePicture, what: Loose) => sensitivities.find((one) => one.what === what)!;
function figures(at: Plan): ToleranceFigures {
  const { path, feeds } = okValue(
    readPlan(at, { azimuthCutElevation_deg: 10, pathElevation_deg: 10, rungs_deg: [], rearSector_deg: 120 }),
  );
  const { forward_dBi, frontToBack_dB, frontToRear_dB } = path;
  const { impedance_ohm, swr50 } = feeds[0]!;
  return {
    forward_dBi,
    frontToBack_dB,
    frontToRear_dB,
    resistance_ohm: impedance_ohm.re,
    reactance_ohm: impedance_ohm.im,
    swr50,
  };
}
const thicker = (factor: number): Plan => ({
  ...plan,
  elements: plan.elements.map((element) => ({ ...element, diameter_mm: element.diameter_mm * factor })),
});

describe("draws and bands, by theory", () => {
  /*
   * A sum of errors, each even over ±h, has mean 0 and variance Σ a²h²/3. Of n draws the mean strays by √(variance/n), the
   * variance by at most √(2/n) of itself; four times that is allowed, which one right generator in 16 000 exceeds.
   */
  test("linear propagation: mean and variance of a weighted sum", () => {
    const limits = [0.02, 0.3, 1];
    const weights = [40, -3, 0.5];
    const draws = drawErrors(
      { draws: 5000, seed: 4, errors: none },
      limits.map((limit) => ({ drawn: (share: number) => share * limit })),
    );
    const sums = draws.map(({ x }) => x.reduce((sum, v, i) => sum + v * weights[i]!, 0));
    const mean = sums.reduce((sum, v) => sum + v, 0) / sums.length;
    const variance = sums.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (sums.length - 1);
    const expected = limits.reduce((sum, limit, i) => sum + (limit * weights[i]!) ** 2 / 3, 0);
    expect(Math.abs(mean)).toBeLessThan(4 * Math.sqrt(expected / sums.length));
    expect(Math.abs(variance / expected - 1)).toBeLessThan(4 * Math.sqrt(2 / sums.length));
  });

  test("a band leaves five in a hundred below and above", () => {
    const values = Array.from({ length: 101 }, (_, i) => (i * 37) % 101);
    expect(bandOf(values)).toEqual({ low: 5, middle: 50, high: 95 });
    expect(bandOf([1, 3])).toEqual({ low: 1.1, middle: 2, high: 2.9 });
    expect(bandOf([Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, 1]).low).toBe(Number.NEGATIVE_INFINITY);
    expect(() => bandOf([Number.NaN])).toThrow(RangeError);
  });

  test("the farthest that is drawn is the end that is told, on every axis", () => {
    for (const { what, drawn, limits } of looseAxes(request)) {
      expect(drawn(1), `${what}`).toBeCloseTo(limits.more, 12);
      expect(drawn(-1), `${what}`).toBeCloseTo(-limits.less, 12);
    }
    const thickness = looseAxes(request).find(({ what }) => what === "thickness")!;
    expect(thickness.inUnits(thickness.drawn(0.5))).toBeCloseTo(5, 9);
  });

  /** Of n draws even over ±1 the one that 5 of 100 lie below strays by √(0.05·0.95/n)/0.5; four times that either end. */
  test("one small error alone: the band is nine tenths of its slope", () => {
    const { soil: _, ...dry } = request;
    const draws = 2000;
    const picture = okValue(
      driveTrial(okValue(toleranceTrial({ ...dry, draws, errors: { ...none, driven_m: 0.01 } }))),
    );
    const slope = of(picture, "driven").slope.reactance_ohm;
    const { low, high } = picture.bands!.reactance_ohm;
    const stray = 4 * (Math.sqrt((0.05 * 0.95) / draws) / 0.5);
    expect(Math.abs((high - picture.exact.reactance_ohm) / slope - 0.9)).toBeLessThan(stray);
    expect(Math.abs((picture.exact.reactance_ohm - low) / slope - 0.9)).toBeLessThan(stray);
  });
});

describe("against solves of the plan itself", () => {
  const picture = run();

  test("where the plan stands", () => {
    const exact = figures(plan);
    for (const key of Object.keys(exact) as (keyof ToleranceFigures)[])
      expect(picture.exact[key]).toBeCloseTo(exact[key], 5);
  });

  /*
   * Central differences of whole solves over ±5 cm (or percent), a little bent (third order) and cut into wires a little otherwise at each length:
   * allowed is 3 % of the slope, and what a mesh's hundredth of an ohm, or a thousandth of a decibel, is worth over 10 cm.
   */
  test("slopes are those of solves either side", () => {
    const sides: [Loose, Plan, Plan][] = [
      ["driven", withElementHeight(plan, "driven", 7.2), withElementHeight(plan, "driven", 7.3)],
      ["reflector", withElementHeight(plan, "reflector", 7.55), withElementHeight(plan, "reflector", 7.65)],
      ["spacing", withSpacing(plan, 5.85), withSpacing(plan, 5.95)],
      ["thickness", thicker(0.95), thicker(1.05)],
    ];
    for (const [what, less, more] of sides) {
      const [low, high] = [figures(less), figures(more)];
      const { slope } = of(picture, what);
      for (const key of ["forward_dBi", "frontToBack_dB", "resistance_ohm", "reactance_ohm"] as const) {
        const direct = (high[key] - low[key]) / 10;
        const mesh = key.endsWith("ohm") ? 0.02 : 0.002;
        expect(Math.abs(slope[key] - direct), `${what} ${key}: ${slope[key]}, ${direct}`).toBeLessThan(
          0.03 * Math.abs(direct) + mesh / 10,
        );
      }
    }
  });

  /** The checked error of the response, stated on the picture, and as much again. */
  test("at the ends of each error, and of the soil", () => {
    const soilAt = (ground: { relativePermittivity: number; conductivity_SPerM: number }): Plan => ({
      ...plan,
      ground: { kind: "soil", ...ground },
    });
    const ends: [Loose, Plan, Plan][] = [
      ["reflector", withElementHeight(plan, "reflector", 7.55), withElementHeight(plan, "reflector", 7.65)],
      ["spacing", withSpacing(plan, 5.7), withSpacing(plan, 6.1)],
      ["thickness", thicker(0.9), thicker(1.1)],
      ["soil", soilAt(request.soil!.dry), soilAt(request.soil!.wet)],
    ];
    for (const [what, less, more] of ends)
      for (const [end, at] of [
        ["less", less],
        ["more", more],
      ] as const) {
        const [found, solved] = [of(picture, what).ends![end], figures(at)];
        expect(Math.abs(found.forward_dBi - solved.forward_dBi)).toBeLessThan(0.02);
        expect(Math.abs(found.frontToBack_dB - solved.frontToBack_dB)).toBeLessThan(0.03);
        expect(Math.abs(found.reactance_ohm - solved.reactance_ohm)).toBeLessThan(0.1);
      }
  });

  test("what is allowed costs just what may be lost", () => {
    const reflector = of(picture, "reflector");
    const { less, more } = reflector.allowed.frontToBack;
    for (const [way, allowed] of [
      [-1, less],
      [1, more],
    ] as const) {
      if (allowed === null) continue;
      const there = figures(withElementHeight(plan, "reflector", 7.6 + (way * allowed) / 100));
      expect(Math.abs(picture.exact.frontToBack_dB - there.frontToBack_dB - picture.lost.frontToBack_dB)).toBeLessThan(
        0.03,
      );
    }
    expect(less ?? more).not.toBeNull();
    const { more: far } = of(picture, "spacing").allowed.forward;
    if (far !== null) {
      const there = figures(withSpacing(plan, 5.9 + far / 100));
      expect(Math.abs(picture.exact.forward_dBi - there.forward_dBi - picture.lost.forward_dB)).toBeLessThan(0.02);
    }
  });

  test("a wrong heading is the same pattern, turned", () => {
    const solved = okValue(solvePlan(plan));
    const { ends, allowed } = of(picture, "heading");
    const at = (azimuth_deg: number) => solved.gain_dBi(10, azimuth_deg);
    expect(ends!.more.forward_dBi).toBeCloseTo(at(-5), 4);
    expect(ends!.more.frontToBack_dB).toBeCloseTo(at(-5) - at(175), 3);
    const rear = Math.max(...Array.from({ length: 61 }, (_, i) => at(120 + 2 * i - 5)));
    expect(ends!.more.frontToRear_dB).toBeCloseTo(at(-5) - rear, 3);
    expect(at(0) - at(allowed.forward.more!)).toBeCloseTo(picture.lost.forward_dB, 3);
  });

  test("cuts and ladder: bands hold what the plan is, in order", () => {
    const { ladder, elevationCut, azimuthCut, draws } = picture.bands!;
    expect(draws).toBe(400);
    expect(ladder.map(({ elevation_deg }) => elevation_deg)).toEqual([5, 10, 20]);
    for (const { angle_deg, low_dBi, middle_dBi, high_dBi } of [elevationCut, azimuthCut])
      angle_deg.forEach((_, i) => {
        expect(low_dBi[i]!).toBeLessThanOrEqual(middle_dBi[i]!);
        expect(middle_dBi[i]!).toBeLessThanOrEqual(high_dBi[i]!);
      });
    // The path's rung is the path's figure.
    expect(ladder[1]!.forward_dBi).toEqual(picture.bands!.forward_dBi);
    // Alone, without any error but a hair of thickness, the cuts are the plan's own.
    const { soil: _, ...dry } = request;
    const still = okValue(driveTrial(okValue(toleranceTrial({ ...dry, errors: { ...none, thickness: 1e-9 } }))));
    const solved = okValue(solvePlan(plan));
    const { elevationCut: up, azimuthCut: round } = still.bands!;
    up.angle_deg.forEach((angle, i) => {
      // Overhead an upright sends nothing; gain is told down to −120 dBi.
      const gain = Math.max(-120, angle <= 90 ? solved.gain_dBi(angle, 0) : solved.gain_dBi(180 - angle, 180));
      expect(Math.abs(up.middle_dBi[i]! - gain)).toBeLessThan(1e-4);
    });
    round.angle_deg.forEach((angle, i) => {
      expect(Math.abs(round.middle_dBi[i]! - solved.gain_dBi(10, angle))).toBeLessThan(1e-3);
    });
  });

  test("designs drawn and solved agree with the response", () => {
    expect(picture.error!.solved).toBe(6);
    expect(picture.error!.forward_dB).toBeLessThan(0.05);
    expect(picture.error!.frontToBack_dB).toBeLessThan(0.1);
    expect(picture.error!.impedance_ohm).toBeLessThan(0.3);
  });

  test("the same seed gives the same, another seed other draws of the same", () => {
    expect(run()).toEqual(picture);
    const other = run({ seed: 2 });
    expect(other.bands).not.toEqual(picture.bands);
    expect(other.sensitivities).toEqual(picture.sensitivities);
  });
});

test("one vertical: only what it has can be off", () => {
  const alone = run({
    plan: { ...plan, elements: plan.elements.slice(0, 1) },
    errors: { ...none, driven_m: 0.05 },
  });
  expect(alone.sensitivities.map(({ what }) => what)).toEqual(["driven", "thickness", "soil", "heading"]);
});

describe("what cannot be asked", () => {
  const problems = (change: Partial<ToleranceRequest>) => {
    const trial = trialOf({ ...request, ...change });
    return trial.ok ? [] : trial.problems.map(({ code, where }) => `${code} ${where}`);
  };
  const { errors } = request;
  test("each is named, with its place", () => {
    expect(problems({ draws: 0 })).toEqual(["out-of-range draws"]);
    expect(problems({ draws: 5001 })).toEqual(["out-of-range draws"]);
    expect(problems({ errors: { ...errors, driven_m: -0.1 } })).toEqual(["out-of-range errors.driven_m"]);
    expect(problems({ errors: { ...errors, reflector_m: 2 } })).toEqual(["out-of-range errors.reflector_m"]);
    expect(problems({ errors: { ...errors, spacing_m: 3 } })).toEqual(["out-of-range errors.spacing_m"]);
    expect(problems({ errors: { ...errors, thickness: 0.6, heading_deg: 181 } })).toEqual([
      "out-of-range errors.thickness",
      "out-of-range errors.heading_deg",
    ]);
    expect(problems({ seed: 2 ** 32 })).toEqual(["out-of-range seed"]);
    expect(problems({ rungs_deg: [5, 95] })).toEqual(["out-of-range rungs_deg[1]"]);
    expect(problems({ azimuthCutElevation_deg: 0 })).toEqual(["out-of-range azimuthCutElevation_deg"]);
    const wet = { relativePermittivity: 0, conductivity_SPerM: -1 };
    expect(problems({ soil: { ...request.soil!, wet } })).toEqual([
      "out-of-range soil.wet.relativePermittivity",
      "out-of-range soil.wet.conductivity_SPerM",
    ]);
    expect(problems({ plan: { ...plan, ground: { kind: "perfect" } } })).toEqual(["needs-soil soil"]);
    expect(problems({ plan: { ...plan, elements: plan.elements.slice(0, 1) } })).toEqual([
      "out-of-range errors.reflector_m",
      "out-of-range errors.spacing_m",
    ]);
    const { soil: _, ...dry } = request;
    const still = trialOf({ ...dry, errors: none });
    expect(still.ok ? "" : still.problems[0]!.message).toBe(
      "Every error is 0 and no soil is given; at least one must be above 0.",
    );
  });
  test("value and limit in words", () => {
    const trial = toleranceTrial({ ...request, draws: 0 });
    expect(trial.ok ? "" : trial.problems[0]!.message).toBe(
      "The number of draws is 0; it must be at least 20 and at most 5000.",
    );
  });
});
