import fc from "fast-check";
import { expect, test } from "vitest";
import { feedFacts } from "../../../src/charts/feedFacts.ts";
import { feedWords } from "../../../src/charts/feedWords.ts";
import { readQuantity, readSweep } from "../../../src/charts/readSweep.ts";
import { sweepCurve } from "../../../src/charts/sweepCurve.ts";
import { swr } from "../../../src/charts/swr.ts";
import { evenly } from "./evenly.ts";

const all = { from_MHz: 7, to_MHz: 7.2 };

/** R and X that run straight from one end of a band to the other, so that every answer has a closed form. */
function straight(r0: number, r1: number, x0: number, x1: number, samples = 9) {
  const t = Array.from({ length: samples }, (_, i) => i / (samples - 1));
  return {
    frequency_MHz: t.map((u) => 7 + 0.2 * u),
    resistance_ohm: t.map((u) => r0 + u * (r1 - r0)),
    reactance_ohm: t.map((u) => x0 + u * (x1 - x0)),
  };
}

test("SWR by its definition: 50 is 1, 25 and 100 are 2, no power taken is infinite", () => {
  expect(swr(50, 0)).toBe(1);
  expect(swr(100, 0)).toBeCloseTo(2, 12);
  expect(swr(25, 0)).toBeCloseTo(2, 12);
  // |Γ| of 50 + j50 is 1/√5: (√5 + 1)/(√5 − 1).
  expect(swr(50, 50)).toBeCloseTo((Math.sqrt(5) + 1) / (Math.sqrt(5) - 1), 12);
  expect(swr(0, 20)).toBe(Number.POSITIVE_INFINITY);
  expect(swr(-3, 20)).toBe(Number.POSITIVE_INFINITY);
  expect(swr(Number.NaN, 0)).toBeNaN();
});

test("lowest SWR and X = 0 are two places when R is not 50 and runs with frequency", () => {
  const sweep = straight(30, 40, -20, 20);
  const { lowest, resonances } = feedFacts(sweep, all);
  expect(resonances).toHaveLength(1);
  expect(resonances[0]!.frequency_MHz).toBeCloseTo(7.1, 12);
  expect(resonances[0]!.resistance_ohm).toBeCloseTo(35, 9);
  expect(lowest!.frequency_MHz).toBeGreaterThan(7.105);
  // Against a fine walk over the same straight lines.
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= 200_000; i++) {
    const u = i / 200_000;
    least = Math.min(least, swr(30 + 10 * u, -20 + 40 * u));
  }
  expect(lowest!.swr).toBeCloseTo(least, 8);
  expect(lowest!.swr).toBeLessThanOrEqual(least + 1e-12);
});

test("the stretch under 2 ends where the SWR is 2, whether or not a sample lies there", () => {
  const sweep = straight(50, 50, -60, 60);
  const { under2 } = feedFacts(sweep, all);
  expect(under2).toHaveLength(1);
  // At R = 50: SWR 2 where X = 50/√2.
  const x = 50 / Math.sqrt(2);
  expect(under2[0]!.from_MHz).toBeCloseTo(7.1 - (x / 600) * 1, 9);
  expect(under2[0]!.to_MHz).toBeCloseTo(7.1 + (x / 600) * 1, 9);
});

test("stretches that are apart stay apart; a crossing on a sample is one resonance; out of the span nothing counts", () => {
  const f = [7, 7.05, 7.1, 7.15, 7.2];
  const two = { frequency_MHz: f, resistance_ohm: [50, 50, 50, 50, 50], reactance_ohm: [0, 100, 200, 100, 0] };
  const facts = feedFacts(two, all);
  expect(facts.under2).toHaveLength(2);
  expect(facts.resonances.map((r) => r.frequency_MHz)).toEqual([7, 7.2]);
  const one = { ...two, reactance_ohm: [-10, -5, 0, 5, 10] };
  expect(feedFacts(one, all).resonances).toEqual([{ frequency_MHz: 7.1, resistance_ohm: 50 }]);
  expect(feedFacts(one, all).under2).toEqual([{ from_MHz: 7, to_MHz: 7.2 }]);
  expect(feedFacts(one, { from_MHz: 7.12, to_MHz: 7.2 }).resonances).toEqual([]);
  expect(feedFacts(one, { from_MHz: 7.12, to_MHz: 7.2 }).lowest!.frequency_MHz).toBeCloseTo(7.12, 12);
  expect(feedFacts(one, { from_MHz: 8, to_MHz: 9 })).toEqual({ lowest: null, resonances: [], under2: [] });
});

test("samples that are not finite leave out their pieces and harm nothing else", () => {
  const sweep = straight(50, 50, -60, 60);
  const holed = { ...sweep, resistance_ohm: sweep.resistance_ohm.map((r, i) => (i === 4 ? Number.NaN : r)) };
  const facts = feedFacts(holed, all);
  expect(facts.resonances).toEqual([]);
  expect(Number.isFinite(facts.lowest!.swr)).toBe(true);
  expect(facts.under2.every((s) => Number.isFinite(s.from_MHz + s.to_MHz))).toBe(true);
});

test("whatever the sweep: the lowest is lowest, and 2 or less is so exactly inside the stretches", () => {
  const ohm = (min: number, max: number) => fc.array(evenly(min, max), { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(ohm(1, 200), ohm(-150, 150), (r, x) => {
      const sweep = { frequency_MHz: [7, 7.04, 7.08, 7.12, 7.16, 7.2], resistance_ohm: r, reactance_ohm: x };
      const { lowest, under2 } = feedFacts(sweep, all);
      const wrong: string[] = [];
      for (let i = 0; i <= 200; i++) {
        const f = 7 + (0.2 * i) / 200;
        const s = readQuantity(sweep, "swr", f);
        if (!(lowest!.swr <= s + 1e-9)) wrong.push(`lower at ${f}: ${s}`);
        const isEdge = under2.some((u) => Math.min(Math.abs(f - u.from_MHz), Math.abs(f - u.to_MHz)) < 1e-9);
        const isInside = under2.some((u) => f >= u.from_MHz && f <= u.to_MHz);
        if (!isEdge && Math.abs(s - 2) > 1e-9 && isInside !== s < 2) wrong.push(`${s} at ${f}`);
      }
      expect(wrong).toEqual([]);
    }),
    { seed: 5, numRuns: 60 },
  );
});

test("a sweep is read on its samples exactly and nowhere outside", () => {
  const sweep = straight(30, 40, -20, 20, 3);
  expect(readSweep(sweep, 7)).toEqual({ resistance_ohm: 30, reactance_ohm: -20 });
  expect(readSweep(sweep, 7.2).reactance_ohm).toBe(20);
  expect(readSweep(sweep, 7.05).resistance_ohm).toBeCloseTo(32.5, 9);
  expect(readSweep(sweep, 6.99).resistance_ohm).toBeNaN();
  expect(readSweep(sweep, 7.21).resistance_ohm).toBeNaN();
});

test("the drawn SWR curve goes down to its own minimum", () => {
  const sweep = straight(50, 50, -30, 30, 2);
  const drawn = Math.min(...sweepCurve(sweep, "swr").map((s) => s.value));
  // Through the two samples alone it would stay at 1.8.
  expect(drawn).toBeLessThan(1.15);
  expect(sweepCurve(sweep, "reactance")).toHaveLength(2);
});

test("words: the two frequencies and why, or that they are one; how much of the band is covered", () => {
  const apart = feedWords(feedFacts(straight(30, 40, -20, 20), all), all).join(" ");
  expect(apart).toMatch(
    /Lowest SWR 1\.4\d at 7\.1\d\d MHz\. X = 0 at 7\.100 MHz, where R is 35 Ω: \d+ kHz from the lowest SWR/,
  );
  expect(apart).toMatch(/2 or less over 7\.00\d–7\.200 MHz, 9\d % of the band/);
  expect(feedWords(feedFacts(straight(40, 40, -9, 9), all), all).join(" ")).toContain("over the whole band");
  const same = feedWords(feedFacts(straight(50, 50, -60, 60), all), all).join(" ");
  expect(same).toContain("the same place as the lowest SWR");
  expect(same).toContain("59 % of the band");
  const none = feedWords(feedFacts(straight(5, 5, 90, 120), all), all).join(" ");
  expect(none).toContain("X does not pass through zero");
  expect(none).toContain("Nowhere in the band");
  expect(feedWords({ lowest: null, resonances: [], under2: [] }, all)).toEqual(["No figures across the band yet."]);
});
