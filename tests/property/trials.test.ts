import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { arrayFigures, arraySample, directionsOf, type ElementBase, type Plan } from "../../engine/index.ts";
import { uprightCuts } from "../../engine/sweep/trial/uprightCuts.ts";
import { drawTrial } from "../support/drawTrial.ts";
import { okValue } from "../support/okValue.ts";
import { trialPair } from "../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 180_000 });

const look = { pathElevation_deg: 11, rearSector_deg: 120 };
const directions = directionsOf(look);
const soils = [
  { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 },
  { kind: "soil", relativePermittivity: 5, conductivity_SPerM: 0.001 },
  { kind: "perfect" },
] as const;

const pairs = fc
  .record({
    ground: fc.constantFrom(...soils),
    radials: fc.integer({ min: 4, max: 60 }),
    spacing_m: fc.double({ min: 1.6, max: 12, noNaN: true }),
    driven_m: fc.double({ min: 6.6, max: 7.8, noNaN: true }),
    reflector_m: fc.double({ min: 7, max: 8.2, noNaN: true }),
  })
  .map((given) => trialPair({ ...given, soilModel: "screen" }));

const figuresOf = (plan: Plan) =>
  arrayFigures(plan, okValue(arraySample({ plan, frequency_MHz: plan.frequency_MHz, directions })), {
    look,
    directions,
  });
const withBases = (plan: Plan, bases: readonly ElementBase[]): Plan => ({
  ...plan,
  elements: plan.elements.map((element, i) => ({ ...element, base: bases[i]! })),
});

test("of two like elements, fed and joined changed places, ahead becomes behind", () => {
  fc.assert(
    fc.property(pairs, (pair) => {
      const [driven, reflector] = pair.elements;
      const like: Plan = { ...pair, elements: [driven!, { ...reflector!, height_m: driven!.height_m }] };
      const one = figuresOf(like);
      const other = figuresOf(withBases(like, [{ kind: "joined" }, { kind: "fed" }]));
      // The preview's integral over the ground is good to 3e-4 of what soil adds, tens of ohm at most.
      expect(other.feeds[0]!.impedance_ohm.re).toBeCloseTo(one.feeds[0]!.impedance_ohm.re, 1);
      expect(Math.abs(other.forward_dBi - one.back_dBi)).toBeLessThan(0.01);
      expect(Math.abs(other.back_dBi - one.forward_dBi)).toBeLessThan(0.01);
    }),
    { seed: 1907, numRuns: 12, endOnFailure: true },
  );
});

test("with a third element left or right of the beam, figures are the same", () => {
  fc.assert(
    fc.property(pairs, fc.double({ min: 1, max: 6, noNaN: true }), (pair, left_m) => {
      const aside = (left: number): Plan => ({
        ...pair,
        elements: [...pair.elements, { ...pair.elements[1]!, id: "third", forward_m: 3, left_m: left }],
      });
      const [left, right] = [figuresOf(aside(left_m)), figuresOf(aside(-left_m))];
      expect(Math.abs(left.forward_dBi - right.forward_dBi)).toBeLessThan(0.01);
      expect(Math.abs(left.worstRear_dBi - right.worstRear_dBi)).toBeLessThan(0.01);
      expect(left.feeds[0]!.impedance_ohm.im).toBeCloseTo(right.feeds[0]!.impedance_ohm.im, 1);
    }),
    { seed: 1908, numRuns: 8, endOnFailure: true },
  );
});

test("an array half as large at twice the frequency is the same antenna over perfect ground", () => {
  fc.assert(
    fc.property(pairs, (pair) => {
      const large: Plan = {
        ...pair,
        ground: { kind: "perfect" },
        elements: pair.elements.map((element) => ({ ...element, conductor: "perfect" as const })),
      };
      const small: Plan = {
        ...large,
        frequency_MHz: 2 * large.frequency_MHz,
        elements: large.elements.map((element) => ({
          ...element,
          forward_m: element.forward_m / 2,
          height_m: element.height_m / 2,
          diameter_mm: element.diameter_mm / 2,
          radials: {
            ...element.radials,
            length_m: element.radials.length_m / 2,
            diameter_mm: element.radials.diameter_mm / 2,
          },
        })),
      };
      const [a, b] = [figuresOf(large), figuresOf(small)];
      // Rounding, through the conditioning of the equations.
      expect(b.feeds[0]!.impedance_ohm.re).toBeCloseTo(a.feeds[0]!.impedance_ohm.re, 6);
      expect(b.frontToBack_dB).toBeCloseTo(a.frontToBack_dB, 6);
      expect(b.forward_dBi).toBeCloseTo(a.forward_dBi, 6);
    }),
    { seed: 1909, numRuns: 8, endOnFailure: true },
  );
});

test("a map of any pair is, anywhere on it, the plan there, within twice the error it states", () => {
  fc.assert(
    fc.property(pairs, fc.nat(35), (pair, place) => {
      const map = okValue(
        drawTrial({
          kind: "map",
          plan: pair,
          look,
          spacing_wl: { from: 0.05, to: 0.45, points: 6 },
          reflectorHeight_m: { from: 6.9, to: 8.3, points: 6 },
        }),
      );
      expect(map.error.isAgreed).toBe(true);
      const [s, h] = [place % 6, Math.floor(place / 6)];
      const there: Plan = {
        ...pair,
        elements: [
          pair.elements[0]!,
          { ...pair.elements[1]!, forward_m: -map.spacing_m[s]!, height_m: map.reflectorHeight_m[h]! },
        ],
      };
      // Cut as all of the map: by itself a plan may get a segment more, which moves it by a hundredth of an ohm.
      const ask = { plan: there, frequency_MHz: pair.frequency_MHz, directions, uprightSegments: uprightCuts(pair)! };
      const read = arrayFigures(there, okValue(arraySample(ask)), { look, directions });
      const { re, im } = read.feeds[0]!.impedance_ohm;
      const { figures, error } = map;
      const off = Math.hypot(figures.resistance_ohm[place]! - re, figures.reactance_ohm[place]! - im);
      expect(off).toBeLessThanOrEqual(2 * error.error_ohm);
      expect(Math.abs(figures.forward_dBi[place]! - read.forward_dBi)).toBeLessThanOrEqual(2 * error.error_dB);
      const ratio = (dB: number) => 10 ** (-dB / 20);
      const behind = ratio(read.frontToBack_dB);
      expect(Math.abs(ratio(figures.frontToBack_dB[place]!) - behind)).toBeLessThanOrEqual(
        2 * (error.errorBehind + behind * (10 ** (error.error_dB / 20) - 1)),
      );
    }),
    { seed: 1910, numRuns: 10, endOnFailure: true },
  );
});
