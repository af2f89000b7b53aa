import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildLine } from "../../../engine/kernel/halfSpace/buildLine.ts";
import { buildPatches } from "../../../engine/kernel/halfSpace/buildPatches.ts";
import { buildTable } from "../../../engine/kernel/halfSpace/buildTable.ts";
import { halfSpaceOf } from "../../../engine/kernel/halfSpace/HalfSpace.ts";
import { placeAcross, placeInAir, placeInSoil } from "../../../engine/kernel/halfSpace/Placement.ts";
import { readLine } from "../../../engine/kernel/halfSpace/readLine.ts";
import { readPatchKernels } from "../../../engine/kernel/halfSpace/readPatchKernels.ts";
import { readTable } from "../../../engine/kernel/halfSpace/readTable.ts";
import { reflected, reflectedInSoil, transmitted } from "../../../engine/kernel/halfSpace/sommerfeld.ts";
import { splineCoefficients } from "../../../engine/kernel/halfSpace/splineCoefficients.ts";

const got = new Float64Array(10);
const want = new Float64Array(9);

/** Largest difference of S + A g from the integrals, times R. */
function mismatch(A: Float64Array, rho: number, zeta: number): number {
  const R = Math.hypot(rho, zeta);
  let worst = 0;
  for (let k = 0; k < 4; k++) {
    const f = k === 2 ? rho / (R + zeta) : 1;
    const re = got[2 * k]! + f * (A[2 * k]! * got[8]! - A[2 * k + 1]! * got[9]!);
    const im = got[2 * k + 1]! + f * (A[2 * k]! * got[9]! + A[2 * k + 1]! * got[8]!);
    worst = Math.max(worst, Math.hypot(re - want[2 * k]!, im - want[2 * k + 1]!) * R);
  }
  return worst;
}

const unit = () => fc.double({ min: 0, max: 1, noNaN: true });
const spot = fc.record({ size: unit(), turn: unit() });
const between = (a: number, b: number, u: number) => a * (b / a) ** u;

const grounds = [
  { f: 1.8e6, er: 13, sigma: 0.005 },
  { f: 7.1e6, er: 3, sigma: 0.0001 },
  { f: 14.1e6, er: 81, sigma: 5 },
  // Waves in soil that nearly keep pace with those in air, little damped: the hardest to interpolate.
  { f: 14.2e6, er: 30, sigma: 0.01 },
  { f: 30e6, er: 20, sigma: 0.03 },
] as const;

describe.each(grounds)("tables at $f Hz, soil $er / $sigma", { timeout: 30_000 }, ({ f, er, sigma }) => {
  const h = halfSpaceOf(f, er, sigma);
  const wavelength = (2 * Math.PI) / h.k0;
  // A magnitude has two components, each within the stated error.
  const both = Math.SQRT2;

  test("air: within its own stated error, which is below 1e-4", () => {
    const table = buildTable(placeInAir(h), 6e-3, 3 * wavelength);
    expect(table.error).toBeLessThan(1e-4);
    fc.assert(
      fc.property(spot, ({ size, turn }) => {
        const R = between(6e-3, 3 * wavelength, size);
        const [rho, zeta] = [R * Math.cos((Math.PI / 2) * turn), R * Math.sin((Math.PI / 2) * turn)];
        reflected(want, h, rho, zeta);
        readTable(got, table, rho, zeta);
        expect(mismatch(table.staticPart, rho, zeta)).toBeLessThan(both * table.error);
      }),
      { seed: 3, numRuns: 120 },
    );

    const flat = buildLine(table, "zeta", 0.01, 0, 2.9 * wavelength);
    const upright = buildLine(table, "rho", 0.2 * wavelength, 0.01, wavelength);
    expect(Math.max(flat.error, upright.error)).toBeLessThan(1e-4);
    fc.assert(
      fc.property(unit(), (u) => {
        const x = between(1e-3, 2.9 * wavelength, u);
        reflected(want, h, x, 0.01);
        readLine(got, flat, x);
        expect(mismatch(flat.staticPart, x, 0.01)).toBeLessThan(both * flat.error);
        const z = between(0.01, wavelength, u);
        reflected(want, h, 0.2 * wavelength, z);
        readLine(got, upright, z);
        expect(mismatch(upright.staticPart, 0.2 * wavelength, z)).toBeLessThan(both * upright.error);
      }),
      { seed: 4, numRuns: 40 },
    );
  });

  test("across: within its own stated error, which is below 1e-4", () => {
    const depth = 0.05;
    const table = buildTable(placeAcross(h, depth), depth, 2 * wavelength);
    expect(table.error).toBeLessThan(1e-4);
    fc.assert(
      fc.property(spot, ({ size, turn }) => {
        const height = between(1e-3, 0.5 * wavelength, size);
        const rho = between(1e-3, wavelength, turn);
        transmitted(want, h, rho, height, depth);
        readTable(got, table, rho, height + depth);
        expect(mismatch(table.staticPart, rho, height + depth)).toBeLessThan(both * table.error);
      }),
      { seed: 5, numRuns: 80 },
    );
  });

  test("soil: within its own stated error, which is below 1e-4", () => {
    const patches = buildPatches(placeInSoil(h), 0.02, wavelength, 0.6, 1e-5);
    expect(patches.error).toBeLessThan(2e-5);
    const line = buildLine(patches, "zeta", 0.1, 0, wavelength);
    fc.assert(
      fc.property(spot, ({ size, turn }) => {
        const rho = between(1e-3, wavelength, size);
        const zeta = between(0.03, 0.6, turn);
        reflectedInSoil(want, h, rho, zeta);
        readPatchKernels(got, patches, rho, zeta);
        expect(mismatch(line.staticPart, rho, zeta)).toBeLessThan(both * patches.error);
        reflectedInSoil(want, h, rho, 0.1);
        readLine(got, line, rho);
        expect(mismatch(line.staticPart, rho, 0.1)).toBeLessThan(both * line.error);
      }),
      { seed: 6, numRuns: 80 },
    );
  });
});

test("a table is plain data: a copy by structured clone reads the same", () => {
  const h = halfSpaceOf(7.1e6, 13, 0.005);
  const table = buildTable(placeInAir(h), 0.02, 20);
  const copy = structuredClone(table);
  const other = new Float64Array(10);
  readTable(got, table, 3, 1);
  readTable(other, copy, 3, 1);
  expect([...other]).toEqual([...got]);
});

test("beyond the ends the nearest end serves", () => {
  const h = halfSpaceOf(7.1e6, 13, 0.005);
  const table = buildTable(placeInAir(h), 0.02, 20);
  readTable(got, table, 0.001, 0);
  const near = Math.hypot(got[2]!, got[3]!);
  readTable(got, table, 0.02, 0);
  expect(near).toBeCloseTo(Math.hypot(got[2]!, got[3]!), 10);
  for (const rho of [0, 25, 1e4]) {
    readTable(got, table, rho, 1);
    for (const x of got) expect(Number.isFinite(x)).toBe(true);
  }
});

test("the spline is exact for cubics, ends included, and of fourth order", () => {
  const spline = (f: (x: number) => number, n: number) => {
    const values = Float64Array.from({ length: n }, (_, i) => f(i / (n - 1)));
    const c = new Float64Array(n + 2);
    splineCoefficients(c, 0, 1, values, 0, 1, n, new Float64Array(2 * n));
    let worst = 0;
    for (let i = 0; i < n - 1; i++) {
      const mid = (c[i]! + 23 * (c[i + 1]! + c[i + 2]!) + c[i + 3]!) / 48;
      worst = Math.max(worst, Math.abs(mid - f((i + 0.5) / (n - 1))));
    }
    return worst;
  };
  expect(spline((x) => 2 * x ** 3 - x ** 2 + 5 * x - 1, 9)).toBeLessThan(1e-13);
  const order = Math.log2(spline((x) => Math.sin(4 * x), 21) / spline((x) => Math.sin(4 * x), 41));
  expect(order).toBeGreaterThan(3.5);
  expect(() => spline((x) => x, 5)).toThrow(RangeError);
});
