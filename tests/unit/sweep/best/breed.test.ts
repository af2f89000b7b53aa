import { expect, test } from "vitest";
import { cutTo } from "../../../../engine/sweep/best/bestSpace.ts";
import { breed } from "../../../../engine/sweep/best/breed.ts";
import { crowding } from "../../../../engine/sweep/best/crowding.ts";
import { randomFrom } from "../../../../engine/sweep/best/randomFrom.ts";
import { rankFronts } from "../../../../engine/sweep/best/rankFronts.ts";

const box = { least: [0, -1], most: [1, 3] };

test("children stay in the box, and what is held stays put", () => {
  const random = randomFrom(1);
  const held = { least: [0, 2], most: [1, 2] };
  for (let i = 0; i < 2000; i++)
    for (const child of breed([random(), 2], [random(), 2], held, random)) {
      expect(child[0]).toBeGreaterThanOrEqual(0);
      expect(child[0]).toBeLessThanOrEqual(1);
      expect(child[1]).toBe(2);
    }
});

/*
 * By symmetry: of parents at the middle children stray either way alike, and of two parents as far from either bound the mean
 * of both children is the parents'. Means of 8000 stray by a standard deviation over √8000; four times that.
 */
test("neither crossover nor mutation leans to a side", () => {
  const random = randomFrom(2);
  for (const [a, b] of [
    [0.5, 0.5],
    [0.2, 0.8],
  ] as const) {
    const values: number[] = [];
    for (let i = 0; i < 4000; i++) for (const [x] of breed([a, 1], [b, 1], box, random)) values.push(x!);
    const mean = values.reduce((sum, x) => sum + x, 0) / values.length;
    const spread = Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / values.length);
    expect(spread).toBeGreaterThan(0.01);
    expect(Math.abs(mean - 0.5)).toBeLessThan((4 * spread) / Math.sqrt(values.length));
  }
});

test("fronts by rank: equals stand side by side, what breaks a rule stands behind", () => {
  const at = (costs: number[], excess = 0) => ({ at: [], costs, excess });
  expect(rankFronts([at([1, 1]), at([1, 1]), at([2, 0]), at([2, 2]), at([0, 0], 0.5), at([0, 0], 0.2)])).toEqual([
    [0, 1, 2],
    [3],
    [5],
    [4],
  ]);
});

/** By hand: the middle one has (3 − 0)/3 of the first cost and (4 − 0)/4 of the second about it. */
test("room: the ends without end, between them the gap between neighbours", () => {
  const most = Number.POSITIVE_INFINITY;
  expect(
    crowding([
      [0, 4],
      [1, 1],
      [3, 0],
    ]),
  ).toEqual([most, 2, most]);
  expect(
    crowding([
      [0, 4],
      [1, 2],
      [2, 1],
      [4, 0],
    ])[1],
  ).toBeCloseTo(2 / 4 + 3 / 4, 12);
});

test("a place is cut to the millimetre below, within bounds", () => {
  const sides = { least: [6, 7.5004, 3, 0], most: [8, 8, 7, 40] };
  expect(cutTo([7.1239, 7.5008, 5, 12.39], sides)).toEqual([7.123, 7.5004, 5, 12.3]);
});
