import fc from "fast-check";
import { expect, test, vi } from "vitest";
import { type BestRequest, driveTrial, wavelength_m } from "../../engine/index.ts";
import { bestTrial } from "../../engine/sweep/best/bestTrial.ts";
import { climb } from "../../engine/sweep/best/climb.ts";
import { findFront } from "../../engine/sweep/best/findFront.ts";
import { isBetter } from "../../engine/sweep/best/isBetter.ts";
import { spreadOver } from "../../engine/sweep/best/spreadOver.ts";
import { okValue } from "../support/okValue.ts";
import { trialPair } from "../support/trialPair.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 180_000 });

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A bowl for each cost, and a rule, anywhere in a box of any sides; some sides without length. */
const bowls = fc.integer({ min: 1, max: 4 }).chain((variables) =>
  fc.record({
    least: fc.array(real(-5, 0), { minLength: variables, maxLength: variables }),
    extent: fc.array(fc.oneof(fc.constant(0), real(0.1, 5)), { minLength: variables, maxLength: variables }),
    middles: fc.array(fc.array(real(-6, 6), { minLength: variables, maxLength: variables }), {
      minLength: 1,
      maxLength: 3,
    }),
    most: real(-5, 20),
    start: fc.array(real(-8, 8), { minLength: variables, maxLength: variables }),
    seed: fc.integer({ min: 0, max: 1e6 }),
  }),
);

test("a front stays within its box and its rule, is bettered by none, and repeats itself", () => {
  fc.assert(
    fc.property(bowls, ({ least, extent, middles, most, start, seed }) => {
      const bounds = { least, most: least.map((x, v) => x + extent[v]!) };
      const judge = (at: readonly number[]) => ({
        costs: middles.map((middle) => middle.reduce((sum, m, v) => sum + (at[v]! - m) ** 2, 0)),
        excess: Math.max(0, at.reduce((sum, x) => sum + x, 0) - most),
      });
      const run = () => findFront({ bounds, judge, starts: [start], size: 12, rounds: 6, seed });
      const front = run();
      expect(run()).toEqual(front);
      for (const one of front) {
        expect(one.excess).toBe(0);
        one.at.forEach((x, v) => {
          expect(x).toBeGreaterThanOrEqual(bounds.least[v]!);
          expect(x).toBeLessThanOrEqual(bounds.most[v]!);
        });
        for (const other of front) expect(isBetter(other, one)).toBe(false);
      }
      // The start, moved into the box, is never better than all of the front.
      const within = start.map((x, v) => Math.min(bounds.most[v]!, Math.max(bounds.least[v]!, x)));
      const first = { at: within, ...judge(within) };
      for (const one of front) expect(isBetter(first, one)).toBe(false);
    }),
    { seed: 20, numRuns: 60 },
  );
});

test("a climb never ends lower than it starts, nor outside", () => {
  fc.assert(
    fc.property(bowls, ({ least, extent, middles, start }) => {
      const bounds = { least, most: least.map((x, v) => x + extent[v]!) };
      const height = (at: readonly number[]) => -middles[0]!.reduce((sum, m, v) => sum + (at[v]! - m) ** 2, 0);
      const within = start.map((x, v) => Math.min(bounds.most[v]!, Math.max(bounds.least[v]!, x)));
      const end = climb(height, within, bounds);
      expect(height(end)).toBeGreaterThanOrEqual(height(within));
      // A bowl has one top in a box: its middle, moved into it.
      end.forEach((x, v) => {
        const top = Math.min(bounds.most[v]!, Math.max(bounds.least[v]!, middles[0]![v]!));
        expect(Math.abs(x - top)).toBeLessThan(1e-4 * Math.max(1, extent[v]!));
      });
    }),
    { seed: 21, numRuns: 100 },
  );
});

test("points spread over a front: as many as asked, none twice, the cheapest of each cost among them", () => {
  const points = fc.array(fc.tuple(real(0, 1), real(0, 1)), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(points, fc.integer({ min: 3, max: 12 }), (costs, most) => {
      const picked = spreadOver(costs, most, [costs.length - 1]);
      expect(picked[0]).toBe(costs.length - 1);
      expect(picked.length).toBeLessThanOrEqual(most);
      expect(new Set(picked).size).toBe(picked.length);
      for (const c of [0, 1])
        expect(Math.min(...picked.map((i) => costs[i]![c]!))).toBe(Math.min(...costs.map((cost) => cost[c]!)));
    }),
    { seed: 22, numRuns: 200 },
  );
});

const wavelength = wavelength_m(10.12);
const range = (low: number, high: number) =>
  fc.tuple(real(low, high), real(low, high)).map(([a, b]) => ({
    least: Math.min(a, b) * wavelength,
    most: Math.max(a, b) * wavelength,
  }));
const requests: fc.Arbitrary<BestRequest> = fc.record({
  kind: fc.constant("best" as const),
  plan: fc
    .record({ spacing_m: real(3, 9), driven_m: real(6.8, 7.6), reflector_m: real(6.9, 8) })
    .map((given) => trialPair({ ground: { kind: "perfect" }, ...given })),
  look: fc.constant({ pathElevation_deg: 10, rearSector_deg: 90 }),
  segment_MHz: fc.constantFrom({ from: 10.12, to: 10.12 }, { from: 10.1, to: 10.15 }),
  weights: fc.record({ forward: real(0.01, 3), back: real(0, 3), rear: real(0, 3), swr: real(0, 3) }),
  bounds: fc.record({
    driven_m: range(0.23, 0.25),
    reflector_m: range(0.235, 0.265),
    spacing_m: range(0.1, 0.3),
    coil_ohm: fc.constantFrom({ least: 0, most: 0 }, { least: 0, most: 50 }),
  }),
  seed: fc.integer({ min: 0, max: 1e6 }),
  shown: fc.integer({ min: 1, max: 4 }),
});

test("best pairs: within bounds, never worse than the start by score", () => {
  fc.assert(
    fc.property(requests, (request) => {
      const { front, pick, start, isStartBest } = okValue(driveTrial(okValue(bestTrial(request))));
      expect(pick.score).toBeGreaterThanOrEqual(start.score);
      expect(front.length).toBeGreaterThan(0);
      expect(front.length).toBeLessThanOrEqual(request.shown!);
      for (const design of isStartBest ? front : [...front, pick])
        for (const key of ["driven_m", "reflector_m", "spacing_m", "coil_ohm"] as const) {
          expect(design[key]).toBeGreaterThanOrEqual(request.bounds[key].least);
          expect(design[key]).toBeLessThanOrEqual(request.bounds[key].most);
        }
    }),
    { seed: 23, numRuns: 5 },
  );
});
