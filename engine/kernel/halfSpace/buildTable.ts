import { buildPatches } from "./buildPatches.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import type { KernelTable } from "./KernelTable.ts";
import type { Placement } from "./Placement.ts";
import { readPatches } from "./readPatches.ts";
import { splineCoefficients } from "./splineCoefficients.ts";
import { staticPart } from "./staticPart.ts";

/** Wanted error relative to 1/R; the goal for a table is 1e-4. */
export const TABLE_TOLERANCE = 3e-5;
/** Most grid points. */
const LARGEST = 120_000;
const ROUNDS = 3;
/** Cells at which an error is measured, about. */
const SAMPLES = 5000;

/**
 * Tabulates the kernels of one placement ("air", or "across" for one depth) for distances from rMin to rMax.
 *
 * The kernels are integrated on few points (`buildPatches`), read from there on the grid, and measured between its
 * points; the grid is made finer, each direction by itself, until the error is met.
 *
 * Accuracy: reported as `error`; 3e-5/R is aimed at. Cost: 50 to 200 ms.
 * @throws RangeError unless 0 < rMin < rMax
 */
export function buildTable(place: Placement, rMin: number, rMax: number): KernelTable {
  // A quarter of the table's error for the series; the innermost square has its corner at √2 of its side.
  const patches = buildPatches(place, rMin / Math.SQRT2, rMax, rMax, TABLE_TOLERANCE / 4);
  return tabulate(patches, rMin, rMax);
}

function tabulate(patches: KernelPatches, rMin: number, rMax: number): KernelTable {
  const { k0, k1Re, k1Im } = patches.place.halfSpace;
  const R0 = 0.05 / Math.sqrt(k1Re * k1Re + k1Im * k1Im);
  const Rb = 3 / k0;
  let cellsS = 64;
  let cellsT = 48;
  let table = fitGrid(patches, rMin, rMax, R0, Rb, cellsS, cellsT);
  for (let round = 0; round < ROUNDS; round++) {
    const wanted = TABLE_TOLERANCE;
    const inS = measure(table, patches, 0.5, 0);
    const inT = measure(table, patches, 0, 0.5);
    if (inS + inT <= 0.75 * wanted) break;
    // The error falls as the fourth power of the cell.
    const grow = (e: number) => Math.max(1, Math.min(2.5, 1.08 * (e / (0.33 * wanted)) ** 0.25));
    let nextS = Math.ceil(cellsS * grow(inS));
    let nextT = Math.ceil(cellsT * grow(inT));
    const over = Math.sqrt((nextS * nextT) / LARGEST);
    if (over > 1) {
      nextS = Math.floor(nextS / over);
      nextT = Math.floor(nextT / over);
    }
    if (nextS <= cellsS && nextT <= cellsT) break;
    cellsS = nextS;
    cellsT = nextT;
    table = fitGrid(patches, rMin, rMax, R0, Rb, cellsS, cellsT);
  }
  const error =
    Math.max(
      measure(table, patches, 0.5, 0.5),
      measure(table, patches, 0.5, 0.1),
      measure(table, patches, 0.1, 0.5),
      measure(table, patches, 0.3, 0.3),
    ) + patches.error;
  return { ...table, error };
}

const at = new Float64Array(8);

function fitGrid(
  patches: KernelPatches,
  rMin: number,
  rMax: number,
  R0: number,
  Rb: number,
  cellsS: number,
  cellsT: number,
): KernelTable {
  const s0 = Math.log(1 + rMin / R0) + rMin / Rb;
  const s1 = Math.log(1 + rMax / R0) + rMax / Rb;
  const nS = cellsS + 1;
  const nT = cellsT + 1;
  const values = new Float64Array(8 * nS * nT);
  for (let i = 0; i < nS; i++) {
    const R = radiusAt(s0 + ((s1 - s0) * i) / cellsS, R0, Rb);
    for (let j = 0; j < nT; j++) {
      const t = j / cellsT;
      const d = 1 / (1 + t * t);
      readPatches(at, patches, R * (1 - t * t) * d, 2 * R * t * d);
      values.set(at, 8 * (i * nT + j));
    }
  }
  const rows = nS + 2;
  const columns = nT + 2;
  const half = new Float64Array(8 * nS * columns);
  const coefficients = new Float64Array(8 * rows * columns);
  const work = new Float64Array(2 * Math.max(nS, nT));
  for (let i = 0; i < nS; i++)
    for (let c = 0; c < 8; c++) splineCoefficients(half, 8 * i * columns + c, 8, values, 8 * i * nT + c, 8, nT, work);
  for (let j = 0; j < 8 * columns; j++)
    splineCoefficients(coefficients, j, 8 * columns, half, j, 8 * columns, nS, work);
  return {
    place: patches.place,
    staticPart: staticPart(patches.place),
    rMin,
    rMax,
    R0,
    Rb,
    perS: cellsS / (s1 - s0),
    s0,
    perT: cellsT,
    rows,
    columns,
    coefficients,
    error: 0,
  };
}

/** Inverse of s(R) by Newton's method; s is concave, so from a point on the left it converges from the left. */
function radiusAt(s: number, R0: number, Rb: number): number {
  let R = 0;
  for (let i = 0; i < 60; i++) {
    const step = (s - Math.log(1 + R / R0) - R / Rb) / (1 / (R0 + R) + 1 / Rb);
    R += step;
    if (Math.abs(step) < 1e-14 * R) break;
  }
  return R;
}

const weightS = new Float64Array(4);
const weightT = new Float64Array(4);

/**
 * Largest difference between spline and series, times R, at the point (a, b) of 0..1 of every cell; of large grids every
 * so many rows and columns only, with the first and last of each.
 */
function measure(table: KernelTable, patches: KernelPatches, a: number, b: number): number {
  const { rows, columns, coefficients, R0, Rb, s0, perS, perT } = table;
  weights(weightS, a);
  weights(weightT, b);
  const cellsS = rows - 3;
  const cellsT = columns - 3;
  const skip = Math.max(1, Math.sqrt((cellsS * cellsT) / SAMPLES));
  let worst = 0;
  for (let p = 0; p < cellsS; p += skip) {
    const i = p + skip >= cellsS ? cellsS - 1 : Math.floor(p);
    const R = radiusAt(s0 + (i + a) / perS, R0, Rb);
    for (let r = 0; r < cellsT; r += skip) {
      const j = r + skip >= cellsT ? cellsT - 1 : Math.floor(r);
      const t = (j + b) / perT;
      const d = 1 / (1 + t * t);
      readPatches(at, patches, R * (1 - t * t) * d, 2 * R * t * d);
      for (let c = 0; c < 8; c++) {
        let sum = 0;
        for (let m = 0; m < 4; m++)
          for (let n = 0; n < 4; n++)
            sum += weightS[m]! * weightT[n]! * coefficients[8 * ((i + m) * columns + j + n) + c]!;
        worst = Math.max(worst, Math.abs(sum - at[c]!) * R);
      }
    }
  }
  return worst;
}

function weights(out: Float64Array, t: number): void {
  const r = 1 - t;
  out[0] = (r * r * r) / 6;
  out[1] = (3 * t * t * t - 6 * t * t + 4) / 6;
  out[3] = (t * t * t) / 6;
  out[2] = 1 - out[0]! - out[1]! - out[3]!;
}
