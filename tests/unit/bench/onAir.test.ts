import { describe, expect, test } from "vitest";
import { leastPairs, pairStatistics, pairVerdict } from "../../../src/rooms/bench/onair/pairStatistics.ts";

const pairs = (...differences: number[]) => differences.map((d) => ({ forward_dB: d + 7, reverse_dB: 7 }));
const many = (count: number, of: (i: number) => number) => pairs(...Array.from({ length: count }, (_, i) => of(i)));

describe("alternating pairs", () => {
  test("1, 2, 4, 9 dB: median 3, middle half 1.75 to 5.25, deviation √(38/3), by hand", () => {
    const found = pairStatistics(pairs(9, 1, 4, 2))!;
    expect(found.median_dB).toBeCloseTo(3, 12);
    expect(found.middleHalf_dB[0]).toBeCloseTo(1.75, 12);
    expect(found.middleHalf_dB[1]).toBeCloseTo(5.25, 12);
    expect(found.deviation_dB).toBeCloseTo(Math.sqrt(38 / 3), 12);
    expect(found.error_dB).toBeCloseTo((Math.sqrt(Math.PI / 2) * Math.sqrt(38 / 3)) / 2, 12);
  });
  test("no pair says nothing, one pair has no spread", () => {
    expect(pairStatistics([])).toBeNull();
    expect(pairVerdict(null)).toBe("nothing");
    expect(pairStatistics(pairs(5))).toMatchObject({ median_dB: 5, deviation_dB: null, error_dB: null });
  });
  test("one wild pair moves the median by nothing", () => {
    expect(pairStatistics(pairs(4, 5, 6, 5, 90))!.median_dB).toBe(5);
  });
  test("the standard error is what medians of many such tests spread by", () => {
    // Seeded normal differences of deviation 6 dB, 400 tests of 41 pairs: the spread of the spread is 1/√800 = 3.5 %,
    // and the large-count formula is 1 % off at 41; 12 % is three of those.
    let seed = 20260531;
    const uniform = () => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return (seed + 0.5) / 2 ** 32;
    };
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const found = Array.from({ length: 400 }, () => pairStatistics(many(41, () => 6 * normal()))!);
    const mean = found.reduce((sum, one) => sum + one.median_dB, 0) / 400;
    const spread = Math.sqrt(found.reduce((sum, one) => sum + (one.median_dB - mean) ** 2, 0) / 399);
    const said = found.reduce((sum, one) => sum + one.error_dB!, 0) / 400;
    expect(Math.abs(spread / said - 1)).toBeLessThan(0.12);
  });
  test.each([
    ["few", many(leastPairs - 1, () => 8)],
    ["proven", many(leastPairs, (i) => 8 + (i % 2))],
    // s = 10·√(20/19), error 1.2533 · 10.26 / √20 = 2.9 dB.
    ["wide", many(leastPairs, (i) => (i % 2 === 0 ? 18 : -2))],
    // s = 2.05, error 0.57 dB; the median 1.0 lies within 1.15.
    ["no-difference", many(leastPairs, (i) => (i % 2 === 0 ? 3 : -1))],
  ] as const)("%s", (verdict, list) => expect(pairVerdict(pairStatistics(list))).toBe(verdict));
});
