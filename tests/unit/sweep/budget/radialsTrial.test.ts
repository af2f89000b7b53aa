import { describe, expect, test, vi } from "vitest";
import {
  driveTrial,
  type Ground,
  type Plan,
  type RadialLaying,
  type RadialsRequest,
  readPlan,
  trialOf,
  withRadialLaying,
} from "../../../../engine/index.ts";
import { layingReader } from "../../../../engine/sweep/budget/layingReader.ts";
import { radialsTrial } from "../../../../engine/sweep/budget/radialsTrial.ts";
import { arraySample } from "../../../../engine/sweep/trial/arraySample.ts";
import { okValue } from "../../../support/okValue.ts";
import { trialPair } from "../../../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

const average: Ground = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 };
const look = { pathElevation_deg: 10, rearSector_deg: 120 };
const quick = trialPair({ ground: average, radials: 16 });
const full: Plan = { ...quick, soilModel: "full-wave" };
const asking = (plan: Plan, change: Partial<RadialsRequest> = {}): RadialsRequest => ({
  kind: "radials",
  plan,
  wire_m: 90,
  look,
  heights_m: [0],
  ...change,
});
const run = (request: RadialsRequest) => okValue(driveTrial(okValue(radialsTrial(request))));
const readout = (plan: Plan) =>
  okValue(readPlan(plan, { azimuthCutElevation_deg: 10, pathElevation_deg: 10, rungs_deg: [], rearSector_deg: 120 }));
const everyLaying = ({ heights }: ReturnType<typeof run>): RadialLaying[] =>
  heights.flatMap(({ curve, counts, splits, best, cutShort }) => [
    ...curve.map((point) => point.best),
    ...counts,
    ...splits.map((split) => split.best),
    best,
    ...cutShort.flatMap(({ asLong, shorter }) => [asLong, shorter]),
  ]);

/*
 * The readout sums the pattern by three times as many elevations. Found: within 1.1e-6 of the input, 1.2e-4 over sea water.
 */
describe("figures of a laying are those of the plan", () => {
  const pairs: [string, Plan][] = [
    ["quick model", quick],
    ["sea water", { ...quick, ground: { kind: "soil", relativePermittivity: 81, conductivity_SPerM: 5 } }],
    ["full model, lying", trialPair({ ground: average, soilModel: "full-wave", radials: 8 })],
    ["raised, long", withRadialLaying(full, { height_m: 2, fields: fieldsOf(full, 4, 14) })],
    [
      "in the soil, far apart",
      withRadialLaying(trialPair({ ground: average, soilModel: "full-wave", spacing_m: 14 }), {
        height_m: -0.05,
        fields: fieldsOf(full, 6, 5),
      }),
    ],
  ];
  test.each(pairs)("%s", (name, plan) => {
    const reader = layingReader(look);
    const lay = { height_m: 0, fields: plan.elements.map(({ id, radials }) => ({ elementId: id, ...radials })) };
    const laying = reader.read(plan, lay, okValue(arraySample(reader.ask(plan))));
    const { efficiency, path, feeds } = readout(plan);
    expect(laying.forward_dBi).toBeCloseTo(path.forward_dBi, 8);
    expect(laying.frontToBack_dB).toBeCloseTo(path.frontToBack_dB, 7);
    expect(laying.frontToRear_dB).toBeCloseTo(path.frontToRear_dB, 7);
    expect(laying.resistance_ohm).toBeCloseTo(feeds[0]!.impedance_ohm.re, 8);
    expect(laying.swr50).toBeCloseTo(feeds[0]!.swr50, 8);
    expect(Math.abs(10 ** (-laying.loss_dB / 10) - efficiency)).toBeLessThan(name === "sea water" ? 2e-4 : 2e-6);
  });
});

function fieldsOf(plan: Plan, count: number, length_m: number) {
  return plan.elements.map(({ id }) => ({ elementId: id, count, length_m }));
}

describe("a reel of wire, quick model", () => {
  const picture = run(asking(quick));
  const [height] = picture.heights;

  test("no laying takes more wire than there is, nor wire cut beyond its limits", () => {
    const { curve, counts, splits, best } = height!;
    for (const lay of [...counts, ...splits.map((split) => split.best), best])
      expect(lay.wire_m).toBeLessThanOrEqual(90 + 1e-9);
    for (const point of curve) expect(point.best.wire_m).toBeLessThanOrEqual(point.wire_m + 1e-9);
    for (const { fields, wire_m } of everyLaying(picture)) {
      expect(wire_m).toBeCloseTo(
        fields.reduce((sum, { count, length_m }) => sum + count * length_m, 0),
        9,
      );
      for (const { count, length_m } of fields) {
        expect(count).toBeGreaterThanOrEqual(2);
        expect(length_m).toBeGreaterThan(0.049 * 29.62);
        expect(length_m).toBeLessThan(0.501 * 29.62);
      }
    }
  });

  test("more wire is never worse, and the slope is what the curve does", () => {
    const { curve } = height!;
    expect(curve.length).toBeGreaterThan(6);
    curve.slice(1).forEach((point, i) => {
      const before = curve[i]!;
      expect(point.best.forward_dBi).toBeGreaterThanOrEqual(before.best.forward_dBi);
      expect(before.slope_dBPer10m! * ((point.wire_m - before.wire_m) / 10)).toBeCloseTo(
        point.best.forward_dBi - before.best.forward_dBi,
        9,
      );
    });
    expect(curve.at(-1)!.slope_dBPer10m).toBeNull();
  });

  test("the knee: from there on no stretch is worth the limit, the one before is", () => {
    const { curve, knee_m } = height!;
    const at = curve.findIndex(({ wire_m }) => wire_m === knee_m);
    expect(at).toBeGreaterThan(0);
    expect(curve[at - 1]!.slope_dBPer10m).toBeGreaterThanOrEqual(picture.knee_dBPer10m);
    for (const { slope_dBPer10m } of curve.slice(at, -1)) expect(slope_dBPer10m!).toBeLessThan(picture.knee_dBPer10m);
    // Asked for less, wire is worth it for longer.
    const further = run(asking(quick, { knee_dBPer10m: 0.02 })).heights[0]!.knee_m;
    expect(further === null || further > knee_m!).toBe(true);
  });

  test("the best is the best of all splits, and of all counts", () => {
    const { best, splits, counts } = height!;
    expect(splits.length).toBe(5);
    for (const lay of [...splits.map((split) => split.best), ...counts])
      expect(best.forward_dBi).toBeGreaterThanOrEqual(lay.forward_dBi);
    expect(picture.best).toEqual(best);
  });

  test("what it says is what one gets by using it", () => {
    const { path } = readout(withRadialLaying(quick, picture.best));
    expect(picture.best.forward_dBi).toBeCloseTo(path.forward_dBi, 8);
  });

  test("the plan's own radials are told as they are", () => {
    expect(picture.own!.forward_dBi).toBeCloseTo(readout(quick).path.forward_dBi, 8);
    expect(picture.own!.wire_m).toBeCloseTo(2 * 16 * 3.7, 9);
  });

  test("raised ones are left out, with a note", () => {
    const both = run(asking(quick, { heights_m: [0, 2] }));
    expect(both.heights.map(({ height_m }) => height_m)).toEqual([0]);
    expect(both.notes.map(({ code }) => code)).toContain("height-left-out");
  });

  test("uprights that the radials leave out of tune are named", () => {
    const short = trialPair({ ground: average, radials: 16, driven_m: 6.2 });
    const { notes, best } = run(asking(short));
    expect(best.swr50).toBeGreaterThan(2);
    expect(notes.find(({ code }) => code === "wants-retrimming")?.measured).toBe(best.swr50);
    expect(picture.notes.map(({ code }) => code)).not.toContain("wants-retrimming");
  });

  test("one vertical: nothing to split, no front to back", () => {
    const alone = run(asking({ ...quick, elements: quick.elements.slice(0, 1) }, { wire_m: 40 }));
    expect(alone.heights[0]!.splits.map(({ firstPart }) => firstPart)).toEqual([1]);
    expect(alone.best.frontToBack_dB).toBeUndefined();
    expect(alone.best.wire_m).toBeLessThanOrEqual(40 + 1e-9);
  });
});

describe("what cannot be asked", () => {
  const problems = (change: Partial<RadialsRequest>) => {
    const trial = trialOf(asking(quick, change));
    return trial.ok ? [] : trial.problems.map(({ code, where }) => `${code} ${where}`);
  };
  test("each is named, with its place", () => {
    // Two radials of a twentieth wavelength under each of two elements: 5.92 m.
    expect(problems({ wire_m: 5.9 })).toEqual(["out-of-range wire_m"]);
    expect(problems({ wire_m: 5.95 })).toEqual([]);
    expect(problems({ wire_m: Number.NaN })).toEqual(["not-finite wire_m"]);
    expect(problems({ heights_m: [] })).toEqual(["height-count heights_m"]);
    expect(problems({ heights_m: [0, 1, 2, 3] })).toEqual(["height-count heights_m"]);
    expect(problems({ heights_m: [0, -2] })).toEqual(["out-of-range heights_m[1]"]);
    expect(problems({ heights_m: [3] })).toEqual(["raised-needs-full-wave heights_m"]);
    expect(problems({ mostRadials: 121 })).toEqual(["out-of-range mostRadials"]);
    expect(problems({ mostRadials: 1.5 })).toEqual(["not-whole mostRadials"]);
    expect(problems({ knee_dBPer10m: 0 })).toEqual(["out-of-range knee_dBPer10m"]);
    expect(problems({ plan: { ...quick, ground: { kind: "perfect" } } })).toEqual(["needs-soil plan.ground"]);
    expect(problems({ plan: { ...quick, elements: [] } })).toContain("element-count elements");
  });
  test("value and limit in words", () => {
    const trial = radialsTrial(asking(quick, { wire_m: 1 }));
    expect(trial.ok ? "" : trial.problems[0]!.message).toBe(
      "The wire is 1 m; it must be at least 5.92475 m and at most 20000 m (at least 2 radials of 0.05 wavelength under each element).",
    );
  });
});
