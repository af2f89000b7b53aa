import { describe, expect, test, vi } from "vitest";
import {
  type ArraySample,
  arraySample,
  askKey,
  type BandTrialRequest,
  type MapRequest,
  type PaceRequest,
  type Plan,
  type Problem,
  type Result,
  readPlan,
  sweepBand,
  type TrialRequest,
  trialOf,
} from "../../../../engine/index.ts";
import { pairAt } from "../../../../engine/sweep/trial/pairAt.ts";
import { spacingBreaks } from "../../../../engine/sweep/trial/spacingBreaks.ts";
import { zerosBetween } from "../../../../engine/sweep/trial/zerosBetween.ts";
import { drawTrial } from "../../../support/drawTrial.ts";
import { okValue } from "../../../support/okValue.ts";
import { trialPair } from "../../../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

const look = { pathElevation_deg: 8, rearSector_deg: 120 };
const soil = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
const wavelength = 299.792458 / 10.12;
const preview = trialPair({ ground: soil, soilModel: "screen", radials: 16 });
const full = trialPair({ ground: soil, soilModel: "full-wave", radials: 3 });
const perfect = trialPair({ ground: { kind: "perfect" } });

const read = (plan: Plan) => okValue(readPlan(plan, { ...look, azimuthCutElevation_deg: 8, rungs_deg: [] }));
const pace = (plan: Plan, lengths: PaceRequest["lengths"] = "fixed"): PaceRequest => ({
  kind: "pace",
  plan,
  look,
  spacing_wl: { from: 0.05, to: 0.5, points: 10 },
  lengths,
});
const map = (plan: Plan): MapRequest => ({
  kind: "map",
  plan,
  look,
  spacing_wl: { from: 0.08, to: 0.4, points: 5 },
  reflectorHeight_m: { from: 7, to: 8.2, points: 4 },
});

describe("pace", () => {
  test.each([
    ["the preview", preview],
    ["the full model, whose radials cross and part on the way", full],
    ["perfect ground", perfect],
  ])("%s: each step of the walk is the plan there, within the error it states", (_, plan) => {
    const picture = okValue(drawTrial(pace(plan)));
    expect(picture.error.isAgreed).toBe(true);
    expect(picture.isPreview).toBe(plan === preview);
    picture.spacing_m.forEach((spacing_m, i) => {
      const solved = read(pairAt(plan, { spacing_m }));
      const { re, im } = solved.feeds[0]!.impedance_ohm;
      const off = Math.hypot(picture.figures.resistance_ohm[i]! - re, picture.figures.reactance_ohm[i]! - im);
      expect(off, `feed, ${spacing_m}`).toBeLessThanOrEqual(2 * picture.error.error_ohm);
      expect(Math.abs(picture.figures.forward_dBi[i]! - solved.path.forward_dBi)).toBeLessThanOrEqual(
        2 * picture.error.error_dB,
      );
      // As fields: what is behind over what is ahead, off by the errors of both.
      for (const [key, own] of [
        ["frontToBack_dB", solved.path.frontToBack_dB],
        ["frontToRear_dB", solved.path.frontToRear_dB],
      ] as const) {
        const ratio = (dB: number) => 10 ** (-dB / 20);
        const allowed = picture.error.errorBehind + ratio(own) * (10 ** (picture.error.error_dB / 20) - 1);
        expect(Math.abs(ratio(picture.figures[key][i]!) - ratio(own)), `${key}, ${spacing_m}`).toBeLessThanOrEqual(
          2 * allowed,
        );
      }
    });
    expect(picture.here_wl).toBeCloseTo(5.9 / wavelength, 12);
    expect(picture.figures.frontToBack_dB[picture.best.frontToBack]).toBe(Math.max(...picture.figures.frontToBack_dB));
    expect(new Set(picture.reflectorHeight_m)).toEqual(new Set([7.6]));
  });

  test("retuned, the driven is resonant at each step, and no other reflector within reach is quieter behind", () => {
    const picture = okValue(drawTrial({ ...pace(preview, "retuned"), spacing_wl: { from: 0.1, to: 0.3, points: 3 } }));
    expect(picture.atLimit).toEqual([]);
    picture.spacing_m.forEach((spacing_m, i) => {
      const [drivenHeight_m, reflectorHeight_m] = [picture.drivenHeight_m[i]!, picture.reflectorHeight_m[i]!];
      const there = (change: number) =>
        read(pairAt(preview, { spacing_m, drivenHeight_m, reflectorHeight_m: reflectorHeight_m + change }));
      expect(Math.abs(there(0).feeds[0]!.impedance_ohm.im)).toBeLessThanOrEqual(2 * picture.error.error_ohm);
      // 5 cm, some 0.7 %, is beyond what a flat top hides and the interpolation is off by.
      for (const change of [-0.05, 0.05])
        expect(there(change).path.frontToBack_dB).toBeLessThan(there(0).path.frontToBack_dB + 0.005);
      for (const change of [-0.3, 0.3])
        expect(there(change).path.frontToBack_dB).toBeLessThan(there(0).path.frontToBack_dB - 0.1);
    });
  });

  test("a reflector that would have to be cut beyond 8 % is told of", () => {
    const long = trialPair({ ground: { kind: "perfect" }, reflector_m: 8.6 });
    const picture = okValue(drawTrial({ ...pace(long, "retuned"), spacing_wl: { from: 0.1, to: 0.2, points: 2 } }));
    // Of 8.6 m 92 % is 7.91 m; the best is at some 7.45 m.
    expect(picture.atLimit).toEqual([0, 1]);
    expect(picture.reflectorHeight_m[0]).toBeCloseTo(0.92 * 8.6, 3);
  });
});

test("map: every place is the plan there, row by row, and the marks are where the figures are best", () => {
  const picture = okValue(drawTrial(map(preview)));
  expect(picture.error.isAgreed).toBe(true);
  const { figures, spacing_m, reflectorHeight_m, error } = picture;
  reflectorHeight_m.forEach((height, h) => {
    spacing_m.forEach((spacing, s) => {
      const solved = read(pairAt(preview, { spacing_m: spacing, reflectorHeight_m: height }));
      const at = h * spacing_m.length + s;
      const { re, im } = solved.feeds[0]!.impedance_ohm;
      expect(Math.hypot(figures.resistance_ohm[at]! - re, figures.reactance_ohm[at]! - im)).toBeLessThanOrEqual(
        2 * error.error_ohm,
      );
      expect(Math.abs(figures.forward_dBi[at]! - solved.path.forward_dBi)).toBeLessThanOrEqual(2 * error.error_dB);
    });
  });
  const { best } = picture;
  expect(best.forward.value).toBe(Math.max(...figures.forward_dBi));
  expect(best.frontToRear.value).toBe(Math.max(...figures.frontToRear_dB));
  expect(best.swr.value).toBe(Math.min(...figures.swr50));
  const at = figures.frontToBack_dB.indexOf(best.frontToBack.value);
  expect(spacing_m[at % 5]).toBe(best.frontToBack.spacing_m);
  expect(reflectorHeight_m[Math.floor(at / 5)]).toBe(best.frontToBack.reflectorHeight_m);
  expect(picture.here).toMatchObject({ spacing_m: 5.9, reflectorHeight_m: 7.6 });
  expect(picture.here!.spacing_wl).toBeCloseTo(5.9 / wavelength, 12);
  expect(okValue(drawTrial({ ...map(preview), reflectorHeight_m: { from: 7.7, to: 8, points: 3 } })).here).toBeNull();
});

describe("band", () => {
  const band = (plan: Plan, from = 9.2, to = 11): BandTrialRequest => ({
    kind: "band",
    plan,
    look,
    frequency_MHz: { from, to, points: 19 },
  });

  test("each frequency is what a sweep says, and stretches end where a solve just misses the threshold", () => {
    const picture = okValue(drawTrial(band(full)));
    const { figures, error, stretches } = picture;
    const swept = okValue(sweepBand(full, { from_MHz: 9.2, to_MHz: 11, points: 19, elevation_deg: 8 }));
    picture.frequency_MHz.forEach((_, i) => {
      expect(Math.abs(figures.resistance_ohm[i]! - swept.feeds[0]!.resistance_ohm[i]!)).toBeLessThanOrEqual(
        2 * error.error_ohm,
      );
      expect(Math.abs(figures.forward_dBi[i]! - swept.beam!.forward_dBi[i]!)).toBeLessThanOrEqual(2 * error.error_dB);
    });
    const [quiet] = stretches.frontToBack;
    expect(quiet!.from_MHz).toBeGreaterThan(9.2);
    const edge = okValue(sweepBand(full, { from_MHz: quiet!.from_MHz, to_MHz: 11, points: 2, elevation_deg: 8 }));
    // By 0.01 of the field at 6 dB (0.5) is 0.17 dB; the error states less.
    expect(edge.beam!.frontToBack_dB[0]).toBeCloseTo(6, 1);
    for (const { from_MHz, to_MHz } of stretches.all)
      for (const part of [stretches.swr, stretches.frontToBack, stretches.forward])
        expect(part.some((one) => one.from_MHz <= from_MHz + 1e-9 && one.to_MHz >= to_MHz - 1e-9)).toBe(true);
  });

  test("where the beam turns round, a solve is alike ahead and behind; of an array that is always alike nothing is said", () => {
    const picture = okValue(drawTrial(band(perfect)));
    expect(picture.reversals_MHz).toHaveLength(1);
    const at_MHz = picture.reversals_MHz[0]!;
    const there = okValue(sweepBand(perfect, { from_MHz: at_MHz, to_MHz: 11, points: 2, elevation_deg: 8 }));
    expect(Math.abs(there.beam!.frontToBack_dB[0]!)).toBeLessThan(0.05);
    // Side by side, both fed: ahead and behind differ by the rounding of half a turn.
    const [one] = perfect.elements;
    const abreast: Plan = { ...perfect, elements: [one!, { ...one!, id: "beside", left_m: 5, height_m: 7 }] };
    const alike = okValue(drawTrial(band(abreast)));
    expect(alike.figures.frontToBack_dB.some((dB) => dB !== 0)).toBe(true);
    expect(alike.reversals_MHz).toEqual([]);
    expect(alike.stretches.frontToBack).toEqual([]);
  });
});

test("a trial stopped anywhere, its samples written down, goes on to the same picture, in whatever order they come", () => {
  const request = map(perfect);
  const whole = okValue(drawTrial(request));
  let kept = new Map<string, Result<ArraySample>>();
  let solves = 0;
  for (let turn = 0; ; turn++) {
    // Everything anew from what was kept, as after a reload.
    const step = okValue(okValue(trialOf(request))((ask) => kept.get(askKey(ask))));
    expect(step.part).toBeGreaterThanOrEqual(0);
    if (step.asks.length === 0) {
      expect(step.part).toBe(1);
      expect(step.picture).toEqual(whole);
      break;
    }
    for (const ask of step.asks.toReversed().slice(0, 1 + (turn % 7))) {
      kept.set(askKey(ask), arraySample(ask));
      solves++;
    }
    kept = new Map(JSON.parse(JSON.stringify([...kept])) as [string, Result<ArraySample>][]);
  }
  expect(solves).toBe(whole.error.nodes + whole.error.checks);
});

describe("what can be put right is said, all of it at once", () => {
  const problems = (request: Parameters<typeof trialOf>[0]): readonly Problem[] => {
    const result = trialOf(request);
    return result.ok ? [] : result.problems;
  };
  const where = (request: Parameters<typeof trialOf>[0]) => problems(request).map((problem) => problem.where);

  test("ranges", () => {
    expect(
      where({
        ...map(perfect),
        spacing_wl: { from: 0.3, to: 0.3, points: 1 },
        reflectorHeight_m: { from: 0.1, to: 500, points: 1e6 },
      }),
    ).toEqual([
      "spacing_wl.points",
      "spacing_wl",
      "reflectorHeight_m.from",
      "reflectorHeight_m.to",
      "reflectorHeight_m.points",
    ]);
    const backwards = problems({ ...pace(perfect), spacing_wl: { from: 0.4, to: 0.1, points: 10 } });
    expect(backwards.map((problem) => problem.code)).toEqual(["range-order"]);
    expect(backwards[0]!.message).toContain("0.4");
    expect(where({ ...pace(perfect), spacing_wl: { from: 0, to: 5, points: 10.5 } })).toEqual([
      "spacing_wl.from",
      "spacing_wl.to",
      "spacing_wl.points",
    ]);
    expect(where({ ...pace(perfect), spacing_wl: { from: Number.NaN, to: 0.4, points: 10 } })).toContain(
      "spacing_wl.from",
    );
  });

  test("a plan without a reflector, a plan that is none, and one its soil model cannot take", () => {
    const lone: Plan = { ...perfect, elements: [perfect.elements[0]!] };
    expect(problems(map(lone)).map((problem) => problem.code)).toEqual(["needs-reflector"]);
    expect(where(pace({ ...perfect, frequency_MHz: 0 }))).toEqual(["frequency_MHz"]);
    const bare = trialPair({ ground: soil, soilModel: "full-wave", radials: 0 });
    expect(problems(pace(bare)).map((problem) => problem.code)).toContain("base-without-radials");
  });

  test("a look, a threshold, an edge of the band", () => {
    const band: TrialRequest = {
      kind: "band",
      plan: perfect,
      look: { pathElevation_deg: 0, rearSector_deg: 400, arrival_deg: { from: 20, to: 10 } },
      frequency_MHz: { from: 9, to: 70, points: 11 },
      good: { swr: 0.5, frontToBack_dB: -1, forwardWithin_dB: Number.POSITIVE_INFINITY },
    };
    expect(where(band)).toEqual([
      "frequency_MHz.to",
      "look.pathElevation_deg",
      "look.rearSector_deg",
      "look.arrival_deg.to",
      "good.swr",
      "good.frontToBack_dB",
      "good.forwardWithin_dB",
    ]);
    const tall = trialPair({ ground: { kind: "perfect" }, reflector_m: 100 });
    expect(
      where({
        ...band,
        plan: tall,
        look,
        good: { swr: 2, frontToBack_dB: 6, forwardWithin_dB: 1 },
        frequency_MHz: { from: 9, to: 30, points: 11 },
      }),
    ).toEqual(["plan.elements[1].height_m"]);
  });

  test("an element in the reflector's way", () => {
    const blocked: Plan = {
      ...perfect,
      elements: [...perfect.elements, { ...perfect.elements[1]!, id: "third", forward_m: -0.5 * wavelength }],
    };
    const said = problems(pace(blocked));
    expect(said.map((problem) => problem.code)).toEqual(["elements-overlap"]);
    expect(said[0]!.message).toContain("0.5 wavelengths");
  });
});

test("zeros are found between neighbours of different sign, and noise around zero is none", () => {
  const places = Array.from({ length: 11 }, (_, i) => i);
  const zeros = zerosBetween(places, (x) => Math.cos((Math.PI * x) / 5));
  expect(zeros.map((zero) => zero.isRising)).toEqual([false, true]);
  expect(zeros[0]!.at).toBeCloseTo(2.5, 9);
  expect(zeros[1]!.at).toBeCloseTo(7.5, 9);
  expect(zerosBetween(places, (x) => 1e-12 * (x % 2 === 0 ? 1 : -1), 1e-6)).toEqual([]);
  const flat = zerosBetween(places, (x) => (x < 4 ? -1 : x > 6 ? 1 : 0));
  expect(flat).toHaveLength(1);
});

test("breaks: where radials begin to cross, where another meets the line midway, where circles part in the preview", () => {
  const [from, to] = [0.05 * wavelength, 0.5 * wavelength];
  expect(spacingBreaks(preview, from, to)).toHaveLength(1);
  expect(spacingBreaks(preview, from, to)[0]![0]).toBeCloseTo(7.4, 4);
  expect(spacingBreaks(perfect, from, to)).toEqual([]);
  // Two fields of radials of 3.7 m touch at 7.4 m.
  const [[before, after] = [0, 0], ...others] = spacingBreaks(full, from, to);
  expect(others).toEqual([]);
  expect(before).toBeCloseTo(7.4, 4);
  expect(after - before).toBeGreaterThan(0);
  expect(after).toBeLessThan(7.43);
  // Four radials stand at 45 degrees: they meet a line midway up to 2 · 3.7 cos 45°.
  const bus = {
    ...trialPair({ ground: soil, soilModel: "full-wave", radials: 4 }),
    fields: { radials: "bus", bonded: false } as const,
  };
  const breaks = spacingBreaks(bus, from, to);
  expect(breaks).toHaveLength(1);
  expect(breaks[0]![0]).toBeCloseTo(7.4 * Math.SQRT1_2, 4);
});
