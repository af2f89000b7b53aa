import { COS_TABLE, SIN_TABLE, STEP_RAD, STEPS_PER_RAD, TABLE_SIZE } from "../../special/expTable.ts";
import type { KernelLine } from "./KernelLine.ts";

/**
 * The ten numbers of `readTable` from a line: x is ρ where the line fixes ζ, ζ where it fixes ρ. Allocation-free.
 *
 * Outside from..to the nearest end serves (with its own phase).
 * @param out  10 numbers, written: Re, Im of S1..S4, then of g [1/m]
 * Accuracy: `line.error`/R.
 */
export function readLine(out: Float64Array, line: KernelLine, x: number): Float64Array {
  const C = line.coefficients;
  const R = Math.sqrt(x * x + line.value * line.value);
  const last = (C.length >> 3) - 4;
  let y = (Math.log(1 + x / line.x0) + x / line.xb - line.s0) * line.perS;
  y = Math.max(0, Math.min(y, last + 1));
  let i = y | 0;
  if (i > last) i = last;
  const u = y - i;
  const u1 = 1 - u;
  const f0 = u1 * u1 * u1 * (1 / 6);
  const f3 = u * u * u * (1 / 6);
  const f1 = (0.5 * u - 1) * u * u + 2 / 3;
  const f2 = 1 - f0 - f1 - f3;

  // e^{−jk0 R}: the body of `expTable`.
  const { halfSpace, kRe, kIm } = line.place;
  const kR = halfSpace.k0 * R;
  const q = Math.floor(kR * STEPS_PER_RAD + 0.5);
  const r = kR - q * STEP_RAD;
  const r2 = r * r;
  const cq = COS_TABLE[q & (TABLE_SIZE - 1)]!;
  const sq = SIN_TABLE[q & (TABLE_SIZE - 1)]!;
  const sr = r * (1 - r2 * (1 / 6 - r2 * (1 / 60)));
  const cr = 1 - r2 * (0.5 - r2 * (1 / 24));
  const er = cq * cr - sq * sr;
  const ei = -(sq * cr + cq * sr);
  const at = 8 * i;
  for (let c = 0; c < 8; c += 2) {
    const a = at + c;
    const re = f0 * C[a]! + f1 * C[a + 8]! + f2 * C[a + 16]! + f3 * C[a + 24]!;
    const im = f0 * C[a + 1]! + f1 * C[a + 9]! + f2 * C[a + 17]! + f3 * C[a + 25]!;
    out[c] = re * er - im * ei;
    out[c + 1] = re * ei + im * er;
  }
  if (kIm === 0 && kRe === halfSpace.k0) {
    out[8] = er / R;
    out[9] = ei / R;
  } else {
    const size = Math.exp(kIm * R) / R;
    out[8] = size * Math.cos(kRe * R);
    out[9] = -size * Math.sin(kRe * R);
  }
  return out;
}
