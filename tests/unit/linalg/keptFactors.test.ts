import fc from "fast-check";
import { expect, test } from "vitest";
import { factorSymmetric } from "../../../engine/linalg/factorSymmetric.ts";
import { keptFactors } from "../../../engine/linalg/keptFactors.ts";
import { refactorSymmetric } from "../../../engine/linalg/refactorSymmetric.ts";
import { reorderColumns } from "../../../engine/linalg/reorderColumns.ts";
import { solveSymmetric } from "../../../engine/linalg/solveSymmetric.ts";

/** Complex symmetric, its leading minors away from zero; entry (i, j) depends on `seed` from row `from` on, else on nothing. */
function matrixOf(n: number, from: number, seed: number): Float64Array {
  const a = new Float64Array(2 * n * n);
  const noise = (i: number, j: number, part: number) => {
    const turn = Math.sin(12.9898 * i + 78.233 * j + 37.719 * part + (i >= from ? seed : 0)) * 43758.5453;
    return 2 * (turn - Math.floor(turn)) - 1;
  };
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++)
      for (let part = 0; part < 2; part++) {
        const v = noise(i, j, part) + (i === j ? 30 : 0);
        a[2 * (i * n + j) + part] = v;
        a[2 * (j * n + i) + part] = v;
      }
  return a;
}

const lower = ({ n, re, im }: ReturnType<typeof factorSymmetric>) =>
  Array.from({ length: n }, (_, i) => [
    ...re.subarray(i * n, i * n + i + 1),
    ...im.subarray(i * n, i * n + i + 1),
  ]).flat();

function distance(x: readonly number[], y: readonly number[]): number {
  expect(x.length).toBe(y.length);
  return Math.max(0, ...x.map((v, i) => Math.abs(v - y[i]!)));
}

test("taking over any number of rows, from a matrix of any size, gives the factors of the whole", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 24 }),
      fc.integer({ min: 0, max: 24 }),
      fc.integer({ min: 0, max: 24 }),
      (n, kept, more) => {
        const rows = Math.min(n, kept);
        const before = factorSymmetric(matrixOf(rows + more, rows, 1), rows + more);
        const now = matrixOf(n, rows, 2);
        expect(distance(lower(refactorSymmetric(now, n, before, rows)), lower(factorSymmetric(now, n)))).toBeLessThan(
          1e-13,
        );
      },
    ),
    { seed: 5, numRuns: 200 },
  );
  expect(() => refactorSymmetric(matrixOf(4, 0, 1), 4, factorSymmetric(matrixOf(3, 0, 1), 3), 4)).toThrow(RangeError);
});

test("one matrix after another, alike for so many rows or not at all: always the factors of the newest", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 20 })), { maxLength: 8 }),
      (steps) => {
        for (const [seed, [n, from]] of steps.entries()) {
          const matrix = matrixOf(n, from, seed);
          const b = Float64Array.from({ length: 4 * n }, (_, i) => Math.cos(i));
          const kept = solveSymmetric(matrix, n, b, 2, keptFactors);
          expect(kept.method).toBe("ldlt");
          expect(distance([...kept.x], [...solveSymmetric(matrix, n, b, 2).x])).toBeLessThan(1e-13);
        }
      },
    ),
    { seed: 6, numRuns: 100 },
  );
});

test("unknowns in another order: the same solution", () => {
  const n = 9;
  const matrix = matrixOf(n, 0, 3);
  const order = Int32Array.from([4, 0, 8, 2, 6, 1, 7, 3, 5]);
  const b = Float64Array.from({ length: 4 * n }, (_, i) => Math.sin(i));
  const ordered = matrix.map((_, at) => {
    const [i, j] = [Math.floor(at / (2 * n)), Math.floor(at / 2) % n];
    return matrix[2 * (order[i]! * n + order[j]!) + (at % 2)]!;
  });
  const { x } = solveSymmetric(ordered, n, reorderColumns(b, n, order), 2);
  expect(distance([...reorderColumns(x, n, order, true)], [...solveSymmetric(matrix, n, b, 2).x])).toBeLessThan(1e-14);
});
