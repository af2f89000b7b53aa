import fc from "fast-check";
import { type Complex, complex, lusolve, type Matrix, matrix } from "mathjs";
import { describe, expect, test } from "vitest";
import { factorLu } from "../../../engine/linalg/factorLu.ts";
import { factorSymmetric } from "../../../engine/linalg/factorSymmetric.ts";
import { measureResidual } from "../../../engine/linalg/measureResidual.ts";
import { solveGeneral } from "../../../engine/linalg/solveGeneral.ts";
import { RESIDUAL_LIMIT, solveSymmetric } from "../../../engine/linalg/solveSymmetric.ts";
import { substituteLu } from "../../../engine/linalg/substituteLu.ts";
import { substituteSymmetric } from "../../../engine/linalg/substituteSymmetric.ts";

/** Park–Miller numbers in (−1, 1): the same on every run. */
function randomNumbers(seed: number): () => number {
  let state = seed % 2147483647 || 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return (2 * state) / 2147483647 - 1;
  };
}

function randomMatrix(n: number, seed: number, symmetric: boolean, diagonal = 0): Float64Array {
  const next = randomNumbers(seed);
  const a = new Float64Array(2 * n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++)
      for (let part = 0; part < 2; part++) {
        const mirrored = symmetric && j < i;
        a[2 * (i * n + j) + part] = mirrored ? a[2 * (j * n + i) + part]! : next();
      }
  for (let i = 0; i < n; i++) a[2 * (i * n + i)] = a[2 * (i * n + i)]! + diagonal;
  return a;
}

function randomColumns(n: number, columns: number, seed: number): Float64Array {
  const next = randomNumbers(seed + 77);
  return Float64Array.from({ length: 2 * n * columns }, next);
}

/** The same systems by an independent general-purpose library. */
function bySomeoneElse(a: Float64Array, n: number, b: Float64Array, columns: number): Float64Array {
  const rows = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => complex(a[2 * (i * n + j)]!, a[2 * (i * n + j) + 1]!)),
  );
  const out = new Float64Array(2 * n * columns);
  for (let c = 0; c < columns; c++) {
    const at = 2 * n * c;
    const column = Array.from({ length: n }, (_, i) => [complex(b[at + 2 * i]!, b[at + 2 * i + 1]!)]);
    const x = lusolve(matrix(rows as unknown as Complex[][]), matrix(column as unknown as Complex[][])) as Matrix;
    (x.toArray() as unknown as Complex[][]).forEach((row, i) => {
      out[at + 2 * i] = row[0]!.re;
      out[at + 2 * i + 1] = row[0]!.im;
    });
  }
  return out;
}

function distance(x: Float64Array, y: Float64Array): number {
  let miss = 0;
  let size = 0;
  for (let i = 0; i < x.length; i++) {
    miss += (x[i]! - y[i]!) ** 2;
    size += y[i]! ** 2;
  }
  return Math.sqrt(miss / size);
}

describe("solveSymmetric", () => {
  test("agrees with an independent solver for every size from 1 to 12 and some to 60, odd and even", () => {
    const sizes = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 23, 40, 59, 60];
    for (const n of sizes) {
      // A diagonal of n keeps every leading minor well away from zero, as impedance matrices do.
      const a = randomMatrix(n, n, true, n);
      const b = randomColumns(n, 2, n);
      const found = solveSymmetric(a, n, b, 2);
      expect(found.method).toBe("ldlt");
      expect(found.residual).toBeLessThan(1e-15);
      expect(distance(found.x, bySomeoneElse(a, n, b, 2)), `n = ${n}`).toBeLessThan(1e-13);
    }
  });

  test("random symmetric matrices of size 1 to 60: the residual it reports is the true one, and small", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 2 ** 30 }), (n, seed) => {
        const a = randomMatrix(n, seed, true);
        const b = randomColumns(n, 3, seed);
        const untouched = [a.slice(), b.slice()];
        const found = solveSymmetric(a, n, b, 3);
        expect([a, b]).toEqual(untouched);
        expect(found.residual).toBe(measureResidual(a, n, found.x, b, 3));
        expect(found.residual).toBeLessThanOrEqual(RESIDUAL_LIMIT);
      }),
      { seed: 20_260, numRuns: 60 },
    );
  });

  test("a zero leading minor makes it fall back to pivoting, and the answer is right", () => {
    // [0 1; 1 3] has no factors without pivoting; with 1e-14 in the corner the 3 drowns in 1e14.
    for (const corner of [0, 1e-14]) {
      const a = Float64Array.of(corner, 0, 1, 0, 1, 0, 3, 0);
      const b = Float64Array.of(5 * corner + 3, -2 * corner + 1, 5 + 9, -2 + 3);
      const found = solveSymmetric(a, 2, b, 1);
      expect(found.method).toBe("lu");
      expect(found.residual).toBeLessThan(1e-15);
      expect(distance(found.x, Float64Array.of(5, -2, 3, 1))).toBeLessThan(1e-14);
    }
  });

  test("a singular matrix is reported by a residual that is not a small number", () => {
    const found = solveSymmetric(Float64Array.of(1, 0, 1, 0, 1, 0, 1, 0), 2, Float64Array.of(1, 0, 0, 0), 1);
    expect(found.residual <= RESIDUAL_LIMIT).toBe(false);
  });

  test("a zero right-hand side is solved by zero", () => {
    const found = solveSymmetric(randomMatrix(5, 9, true, 5), 5, new Float64Array(10), 1);
    expect(found.residual).toBe(0);
    expect([...found.x].every((v) => v === 0)).toBe(true);
  });

  test("arrays too short for their sizes are the caller's mistake", () => {
    expect(() => solveSymmetric(new Float64Array(7), 2, new Float64Array(4), 1)).toThrow(RangeError);
    expect(() => solveSymmetric(new Float64Array(8), 2, new Float64Array(3), 1)).toThrow(RangeError);
  });
});

describe("factorSymmetric", () => {
  test("L D Lᵀ gives the matrix back", () => {
    for (const n of [1, 2, 5, 8, 13]) {
      const a = randomMatrix(n, 3 * n, true, n);
      const { re, im } = factorSymmetric(a, n);
      for (let i = 0; i < n; i++)
        for (let j = 0; j <= i; j++) {
          let sRe = 0;
          let sIm = 0;
          for (let k = 0; k <= j; k++) {
            const [lRe, lIm] = k === i ? [1, 0] : [re[i * n + k]!, im[i * n + k]!];
            const [mRe, mIm] = k === j ? [1, 0] : [re[j * n + k]!, im[j * n + k]!];
            const [dRe, dIm] = [re[k * n + k]!, im[k * n + k]!];
            const pRe = lRe * mRe - lIm * mIm;
            const pIm = lRe * mIm + lIm * mRe;
            sRe += pRe * dRe - pIm * dIm;
            sIm += pRe * dIm + pIm * dRe;
          }
          expect(Math.abs(sRe - a[2 * (i * n + j)]!)).toBeLessThan(1e-14 * n);
          expect(Math.abs(sIm - a[2 * (i * n + j) + 1]!)).toBeLessThan(1e-14 * n);
        }
    }
  });

  test("one factoring serves many columns", () => {
    const n = 17;
    const a = randomMatrix(n, 5, true, n);
    const b = randomColumns(n, 4, 5);
    const together = substituteSymmetric(b.slice(), factorSymmetric(a, n), 4);
    for (let c = 0; c < 4; c++) {
      const alone = substituteSymmetric(b.slice(2 * n * c, 2 * n * (c + 1)), factorSymmetric(a, n), 1);
      expect(together.slice(2 * n * c, 2 * n * (c + 1))).toEqual(alone);
    }
  });
});

describe("solveGeneral and factorLu", () => {
  test("agree with an independent solver on matrices that are not symmetric", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 2 ** 30 }), (n, seed) => {
        const a = randomMatrix(n, seed, false);
        const b = randomColumns(n, 2, seed);
        const x = solveGeneral(a, n, b, 2);
        expect(measureResidual(a, n, x, b, 2)).toBeLessThan(1e-14);
        expect(measureResidual(a, n, bySomeoneElse(a, n, b, 2), b, 2)).toBeLessThan(1e-14);
      }),
      { seed: 20_261, numRuns: 60 },
    );
  });

  test("entries of very different size need the pivoting, and get it", () => {
    const n = 6;
    const a = randomMatrix(n, 21, false);
    for (let i = 0; i < n; i++) a[2 * (i * n + i)] = 1e-18;
    const b = randomColumns(n, 1, 21);
    expect(distance(substituteLu(b.slice(), factorLu(a, n), 1), bySomeoneElse(a, n, b, 1))).toBeLessThan(1e-12);
  });
});
