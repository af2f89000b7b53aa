import { describe, expect, test, vi } from "vitest";
import {
  arrayFigures,
  arraySample,
  type Directions,
  directionsOf,
  type ElementBase,
  type ElementPlan,
  type Plan,
  readPlan,
  sweepBand,
} from "../../../../engine/index.ts";
import { compareSamples } from "../../../../engine/sweep/trial/compareSamples.ts";
import { fieldPlaces } from "../../../../engine/sweep/trial/fieldPlaces.ts";
import { okValue } from "../../../support/okValue.ts";
import { trialPair } from "../../../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 120_000 });

const look = { pathElevation_deg: 9, rearSector_deg: 130 };
const withBases = (plan: Plan, bases: readonly ElementBase[]): Plan => ({
  ...plan,
  elements: plan.elements.map((element, i): ElementPlan => ({ ...element, base: bases[i]! })),
});
const fed = { kind: "fed" } as const;
const third = (plan: Plan): Plan => ({
  ...plan,
  elements: [...plan.elements, { ...plan.elements[1]!, id: "third", forward_m: 5, left_m: 4, height_m: 7 }],
});

const soil = { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 } as const;
const pairs: readonly (readonly [string, Plan])[] = [
  ["the preview over soil", trialPair({ ground: soil, soilModel: "screen", radials: 8 })],
  ["the full model over soil", trialPair({ ground: soil, soilModel: "full-wave", radials: 3 })],
  ["perfect ground", trialPair({ ground: { kind: "perfect" } })],
  ["free space", trialPair({ ground: { kind: "free-space" }, radials: 4 })],
];
const bases: readonly (readonly [string, readonly ElementBase[]])[] = [
  ["joined", [fed, { kind: "joined" }]],
  ["loaded", [fed, { kind: "loaded", resistance_ohm: 4, reactance_ohm: -35 }]],
  ["open", [fed, { kind: "open" }]],
  [
    "both fed, by currents",
    [
      { kind: "fed", current: { magnitude: 1, phase_deg: 0 } },
      { kind: "fed", current: { magnitude: 0.7, phase_deg: 110 } },
    ],
  ],
  ["both fed, by one voltage", [fed, fed]],
];

describe.each(pairs)("%s", (_, pair) => {
  test.each(bases)("a sample and its bases, %s, come to what a solve of the plan says", (_, base) => {
    for (const plan of [withBases(pair, base), third(withBases(pair, base))]) {
      const directions = directionsOf(look);
      const sample = okValue(arraySample({ plan, frequency_MHz: plan.frequency_MHz, directions }));
      const figures = arrayFigures(plan, sample, { look, directions });
      const read = okValue(readPlan(plan, { ...look, azimuthCutElevation_deg: 9, rungs_deg: [] }));
      expect(figures.feeds).toHaveLength(read.feeds.length);
      // One system of equations, eliminated in another order: digits are lost as its condition has it, some 1e5.
      read.feeds.forEach(({ elementId, impedance_ohm, swr50 }, i) => {
        const feed = figures.feeds[i]!;
        expect(feed.elementId).toBe(elementId);
        expect(feed.impedance_ohm.re).toBeCloseTo(impedance_ohm.re, 7);
        expect(feed.impedance_ohm.im).toBeCloseTo(impedance_ohm.im, 7);
        expect(feed.swr50).toBeCloseTo(swr50, 7);
      });
      read.baseCurrents.forEach(({ elementId, current }, i) => {
        expect(figures.baseCurrents[i]!.elementId).toBe(elementId);
        expect(figures.baseCurrents[i]!.current.re).toBeCloseTo(current.re, 8);
        expect(figures.baseCurrents[i]!.current.im).toBeCloseTo(current.im, 8);
      });
      for (const key of ["forward_dBi", "back_dBi", "worstRear_dBi", "frontToBack_dB", "frontToRear_dB"] as const)
        expect(figures[key]).toBeCloseTo(read.path[key], 7);
      expect(figures.worstRearAzimuth_deg).toBe(read.path.worstRearAzimuth_deg);
      expect(figures.pathGain_dBi).toBeNull();
    }
  });
});

test("what is in series with a base stands in the port matrix", () => {
  const pair = trialPair({ ground: soil, soilModel: "screen", radials: 8 });
  const plan: Plan = {
    ...pair,
    elements: pair.elements.map((element) => ({ ...element, baseSeries: { resistance_ohm: 7, reactance_ohm: -4 } })),
  };
  const directions = directionsOf(look);
  const sample = okValue(arraySample({ plan, frequency_MHz: plan.frequency_MHz, directions }));
  const figures = arrayFigures(plan, sample, { look, directions });
  const read = okValue(readPlan(plan, { ...look, azimuthCutElevation_deg: 9, rungs_deg: [] }));
  expect(figures.feeds[0]!.impedance_ohm.re).toBeCloseTo(read.feeds[0]!.impedance_ohm.re, 7);
  expect(figures.forward_dBi).toBeCloseTo(read.path.forward_dBi, 7);
  expect(figures.frontToBack_dB).toBeCloseTo(read.path.frontToBack_dB, 7);
});

test("away from the plan's frequency a sample is what a sweep of the band says there", () => {
  const plan = trialPair({ ground: { kind: "perfect" } });
  const directions = directionsOf(look);
  const sample = okValue(arraySample({ plan, frequency_MHz: 9.7, directions }));
  const figures = arrayFigures(plan, sample, { look, directions });
  const band = okValue(sweepBand(plan, { from_MHz: 9.7, to_MHz: 10, points: 2, elevation_deg: 9 }));
  expect(figures.feeds[0]!.impedance_ohm.re).toBeCloseTo(band.feeds[0]!.resistance_ohm[0]!, 7);
  expect(figures.forward_dBi).toBeCloseTo(band.beam!.forward_dBi[0]!, 7);
  expect(figures.frontToBack_dB).toBeCloseTo(band.beam!.frontToBack_dB[0]!, 7);
});

test("gain over the arrival angles is the mean of the power gains, taken finely", () => {
  const plan = trialPair({ ground: soil, soilModel: "screen", radials: 8 });
  const arriving = { ...look, arrival_deg: { from: 4, to: 22 } };
  const directions = directionsOf(arriving);
  const sample = okValue(arraySample({ plan, frequency_MHz: plan.frequency_MHz, directions }));
  const { pathGain_dBi } = arrayFigures(plan, sample, { look: arriving, directions });
  const rungs_deg = Array.from({ length: 181 }, (_, i) => 4 + i / 10);
  const read = okValue(readPlan(plan, { ...look, azimuthCutElevation_deg: 9, rungs_deg }));
  // The trapezium rule at 181 points: its error is h²/12 of the slopes' difference, 1e-5 here.
  const mean =
    read.ladder.reduce((sum, rung, i) => sum + (i % 180 === 0 ? 0.5 : 1) * 10 ** (rung.forward_dBi / 10), 0) / 180;
  expect(pathGain_dBi).toBeCloseTo(10 * Math.log10(mean), 4);
  // One angle: the gain there.
  const one = { ...look, arrival_deg: { from: 9, to: 9 } };
  const at = arrayFigures(plan, sample, { look: one, directions });
  expect(at.pathGain_dBi).toBeCloseTo(at.forward_dBi, 12);
});

test("elevations looked at ahead alone come last and leave the rest of a sample as it is", () => {
  const plan = trialPair({ ground: soil, soilModel: "screen", radials: 8 });
  const round = directionsOf(look);
  const more = { ...round, ahead_deg: [4, 22] };
  const of = (directions: Directions, frequency_MHz = plan.frequency_MHz) =>
    okValue(arraySample({ plan, frequency_MHz, directions }));
  const sample = of(more);
  const picked = (some: Directions) => fieldPlaces(more, some, 2).map((place) => sample.fields[place]);
  expect(picked(round)).toEqual(of(round).fields);
  const ahead = { elevations_deg: [22, 9], azimuths_deg: [0] };
  expect(picked(ahead)).toEqual(of(ahead).fields);
  expect(() => picked({ elevations_deg: [22], azimuths_deg: [180] })).toThrow(RangeError);
  const goal = { ohm: 1, dB: 0.1, behind: 0.01 };
  const compared = (directions: Directions) =>
    compareSamples(plan.elements, of(directions, 10), of(directions), directions, goal);
  expect(compared(more)).toEqual(compared(round));
});

test("a sample is the same whatever its bases say, and can be written down and read back", () => {
  const plan = trialPair({ ground: soil, soilModel: "full-wave", radials: 3 });
  const directions = directionsOf(look);
  const of = (base: ElementBase) =>
    okValue(arraySample({ plan: withBases(plan, [fed, base]), frequency_MHz: 10.12, directions }));
  const joined = of({ kind: "joined" });
  expect(of({ kind: "open" })).toEqual(joined);
  expect(JSON.parse(JSON.stringify(joined))).toEqual(joined);
});

test("a plan that cannot be solved is refused with its own problems; a look the sample does not serve is thrown back", () => {
  const plan = trialPair({ ground: { kind: "perfect" } });
  const directions = directionsOf(look);
  const high = { ...plan, elements: plan.elements.map((element) => ({ ...element, height_m: 500 })) };
  const refused = arraySample({ plan: high, frequency_MHz: 10, directions });
  expect(refused.ok ? [] : refused.problems.map((problem) => problem.where)).toEqual([
    "elements[0].height_m",
    "elements[1].height_m",
  ]);
  const sample = okValue(arraySample({ plan, frequency_MHz: 10, directions }));
  expect(() => arrayFigures(plan, sample, { look: { ...look, pathElevation_deg: 10 }, directions })).toThrow(
    RangeError,
  );
  expect(() => arrayFigures(third(plan), sample, { look, directions })).toThrow(RangeError);
});
