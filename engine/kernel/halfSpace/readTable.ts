import { COS_TABLE, SIN_TABLE, STEP_RAD, STEPS_PER_RAD, TABLE_SIZE } from "../../special/expTable.ts";
import type { KernelTable } from "./KernelTable.ts";

/**
 * Reads the remainders at one point, and the static kernel that goes with them; allocation-free.
 *
 *   I_k = S_k + A_k g,   g = e^{−jk0 R}/R,   A from `table.staticPart`, A_3 times ρ/(R + ζ)
 *
 * so that K = S2 + A2 g, G_xx = S1 + A1 g, G_zz = S4 + A4 g, G_zx = cos φ (S3 + A3 ρ/(R + ζ) g), all to be divided by 4π.
 * Distances outside rMin..rMax are taken at the nearest end of the table (with their own phase).
 *
 * @param out  10 numbers, written: Re, Im of S1..S4, then of g [1/m]
 * Accuracy: `table.error`/R.
 */
export function readTable(out: Float64Array, table: KernelTable, rho: number, zeta: number): Float64Array {
  const { coefficients: C, columns } = table;
  const R = Math.sqrt(rho * rho + zeta * zeta);
  let x = (Math.log(1 + R / table.R0) + R / table.Rb - table.s0) * table.perS;
  let y = (zeta / (R + rho)) * table.perT;
  const lastX = table.rows - 4;
  const lastY = columns - 4;
  x = Math.max(0, Math.min(x, lastX + 1));
  y = Math.max(0, y);
  let i = x | 0;
  let j = y | 0;
  if (i > lastX) i = lastX;
  if (j > lastY) j = lastY;
  const u = x - i;
  const v = y - j;

  const v1 = 1 - v;
  const w0 = v1 * v1 * v1 * (1 / 6);
  const w3 = v * v * v * (1 / 6);
  const w1 = (0.5 * v - 1) * v * v + 2 / 3;
  const w2 = 1 - w0 - w1 - w3;
  const u1 = 1 - u;
  const f0 = u1 * u1 * u1 * (1 / 6);
  const f3 = u * u * u * (1 / 6);
  const f1 = (0.5 * u - 1) * u * u + 2 / 3;
  const f2 = 1 - f0 - f1 - f3;
  const n0 = i * 8 * columns + 8 * j;
  const n1 = n0 + 8 * columns;
  const n2 = n1 + 8 * columns;
  const n3 = n2 + 8 * columns;
  // One of the eight functions at a time: sixteen products each.
  for (let c = 0; c < 8; c++) {
    const a = n0 + c;
    const b = n1 + c;
    const d = n2 + c;
    const e = n3 + c;
    out[c] =
      f0 * (w0 * C[a]! + w1 * C[a + 8]! + w2 * C[a + 16]! + w3 * C[a + 24]!) +
      f1 * (w0 * C[b]! + w1 * C[b + 8]! + w2 * C[b + 16]! + w3 * C[b + 24]!) +
      f2 * (w0 * C[d]! + w1 * C[d + 8]! + w2 * C[d + 16]! + w3 * C[d + 24]!) +
      f3 * (w0 * C[e]! + w1 * C[e + 8]! + w2 * C[e + 16]! + w3 * C[e + 24]!);
  }

  // e^{−jk0 R}: the body of `expTable`.
  const kR = table.place.halfSpace.k0 * R;
  const q = Math.floor(kR * STEPS_PER_RAD + 0.5);
  const r = kR - q * STEP_RAD;
  const r2 = r * r;
  const cq = COS_TABLE[q & (TABLE_SIZE - 1)]!;
  const sq = SIN_TABLE[q & (TABLE_SIZE - 1)]!;
  const sr = r * (1 - r2 * (1 / 6 - r2 * (1 / 60)));
  const cr = 1 - r2 * (0.5 - r2 * (1 / 24));
  const er = cq * cr - sq * sr;
  const ei = -(sq * cr + cq * sr);
  for (let c = 0; c < 8; c += 2) {
    const re = out[c]!;
    const im = out[c + 1]!;
    out[c] = re * er - im * ei;
    out[c + 1] = re * ei + im * er;
  }
  const inverse = 1 / R;
  out[8] = er * inverse;
  out[9] = ei * inverse;
  return out;
}
