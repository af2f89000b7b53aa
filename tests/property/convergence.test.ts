import { expect, test, vi } from "vitest";
import { type Complex, type Ground, solveWires } from "../../engine/index.ts";
import { crowdedCuts } from "../../engine/wires/crowdedCuts.ts";
import { okValue } from "../support/okValue.ts";
import { SHORT, uprights } from "../support/uprights.ts";

/** The machine may be busy with other tests. */
vi.setConfig({ testTimeout: 30_000 });

const FREQUENCY_HZ = 299_792_458;
const perfect: Ground = { kind: "perfect" };

/** Slope of log error against log n, by least squares. */
function order(n: readonly number[], errors: readonly number[]): number {
  const x = n.map(Math.log);
  const y = errors.map(Math.log);
  const mean = (v: readonly number[]) => v.reduce((a, b) => a + b) / v.length;
  const [mx, my] = [mean(x), mean(y)];
  const top = x.reduce((sum, xi, i) => sum + (xi - mx) * (y[i]! - my), 0);
  return -top / x.reduce((sum, xi) => sum + (xi - mx) ** 2, 0);
}

/*
 * crowdedCuts claims an error of 1/n² where equal segments leave 1/n. The reference is the same mesh family at 768
 * segments; the finest n stays well away from it. Radii are small enough that no segment comes near its limit. (The
 * reactance of short monopoles, right to 2e-4 with 12 segments, falls more slowly, as n^−1.4: the charge at the gap is left.)
 */
const counts = [12, 24, 48, 96];
const FINEST = 768;

test.each([
  ["quarter-wave monopole", 0.25],
  ["5/8-wave monopole", 0.625],
])("the impedance of a %s settles as 1/n²", (_, height) => {
  const z = (segments: number): Complex =>
    okValue(solveWires(uprights(FREQUENCY_HZ, perfect, [{ length_m: height, radius_m: 2e-6, segments }]))).ports[0]!
      .impedance_ohm;
  const best = z(FINEST);
  const errors = counts.map((n) => {
    const coarse = z(n);
    return Math.hypot(coarse.re - best.re, coarse.im - best.im);
  });
  const p = order(counts, errors);
  expect(p).toBeGreaterThan(1.7);
  expect(p).toBeLessThan(2.4);
});

test("the gain of a driven element with a reflector settles as 1/n²", () => {
  const gain = (segments: number) =>
    okValue(
      solveWires(
        uprights(FREQUENCY_HZ, perfect, [
          { length_m: 0.24, radius_m: 2e-6, segments },
          { length_m: 0.25, radius_m: 2e-6, x_m: -0.15, segments, termination: SHORT },
        ]),
      ),
    ).gain_dBi(10, 180);
  const best = gain(384);
  const p = order(
    [8, 16, 32, 64],
    [8, 16, 32, 64].map((n) => Math.abs(gain(n) - best)),
  );
  expect(p).toBeGreaterThan(1.7);
  expect(p).toBeLessThan(2.5);
});

test("cuts run from 0 to 1, rise, mirror themselves, and keep the end segment above its least", () => {
  for (const n of [1, 2, 3, 8, 41])
    for (const shortest of [0, 1e-4, 0.05, 0.2, 1]) {
      const cuts = crowdedCuts(n, shortest);
      expect(cuts).toHaveLength(n + 1);
      expect(cuts[0]).toBe(0);
      expect(cuts[n]).toBe(1);
      for (let i = 0; i < n; i++) expect(cuts[i + 1]! - cuts[i]!).toBeGreaterThan(0);
      for (let i = 0; i <= n; i++) expect(cuts[i]! + cuts[n - i]!).toBeCloseTo(1, 14);
      // Where equal segments would be below the least already, equal is the best there is.
      expect(cuts[1]!).toBeGreaterThanOrEqual(Math.min(shortest, 1 / n) - 1e-15);
    }
  // Crowded for real where there is room: the first of 40 is 1/26 of an equal share.
  expect(crowdedCuts(40, 0)[1]!).toBeLessThan(0.1 / 40);
});
