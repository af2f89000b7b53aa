import { COS_TABLE, SIN_TABLE, STEP_RAD, STEPS_PER_RAD } from "../special/expTable.ts";
import type { VerticalLine } from "./ScreenInput.ts";

/**
 * What an upright line is to the ground below it: its current between nodes is the sinusoid a sin kz + b cos kz through
 * both nodes, whose field is exact,
 *
 *   ρ H_φ(ρ) = Σₙ e^{−jkRₙ} (cₙ + dₙ/Rₙ),   Rₙ = √(ρ² + zₙ²),
 *
 * image in perfect ground included. cₙ holds the jump of the slope at node n over 2πjk, dₙ the height times the jump of
 * the current (zero except at an end that floats). The sinusoid and the straight line through the same nodes
 * differ by at most (kΔ)²/8 of the current, and the sinusoid is the nearer to the truth.
 *
 * Source: the field of a sinusoidal filament, in any antenna text; the antiderivative
 * e^{−jkR}(I z/R + I′/jk) of I ρ²(1 + jkR)e^{−jkR}/R³ was checked by differentiation.
 */
export interface UprightField {
  readonly x_m: number;
  readonly y_m: number;
  /** Squares of the node heights. */
  readonly z2: Float64Array;
  /** states × nodes, complex interleaved. */
  readonly c: Float64Array;
  readonly d: Float64Array;
  readonly floats: boolean;
}

export function uprightField(line: VerticalLine, k: number, states: number): UprightField {
  const { z_m, current } = line;
  const nodes = z_m.length;
  const c = new Float64Array(2 * states * nodes);
  const d = new Float64Array(2 * states * nodes);
  let floats = false;
  const scale = 1 / (2 * Math.PI);
  for (let n = 0; n + 1 < nodes; n++) {
    const step = k * (z_m[n + 1]! - z_m[n]!);
    const cs = Math.cos(step);
    // I′ at both ends over k; its own part goes into cₙ as I′/(2πjk) = −j I′/(2πk).
    const f = scale / Math.sin(step);
    for (let s = 0, at = 2 * n; s < states; s++, at += 2 * nodes) {
      const aRe = current[at]!;
      const aIm = current[at + 1]!;
      const bRe = current[at + 2]!;
      const bIm = current[at + 3]!;
      const lowRe = f * (bRe - aRe * cs);
      const lowIm = f * (bIm - aIm * cs);
      const highRe = f * (bRe * cs - aRe);
      const highIm = f * (bIm * cs - aIm);
      c[at] = c[at]! - lowIm;
      c[at + 1] = c[at + 1]! + lowRe;
      c[at + 2] = c[at + 2]! + highIm;
      c[at + 3] = c[at + 3]! - highRe;
    }
  }
  for (let s = 0, at = 0; s < states; s++, at += 2 * nodes)
    for (const [n, sign] of [
      [0, -1],
      [nodes - 1, 1],
    ] as const)
      for (let part = 0; part < 2; part++) {
        const value = sign * scale * z_m[n]! * current[at + 2 * n + part]!;
        d[at + 2 * n + part] = value;
        if (value !== 0) floats = true;
      }
  return { x_m: line.x_m, y_m: line.y_m, z2: z_m.map((z) => z * z), c, d, floats };
}

/**
 * ρ H_φ of every state at one distance, complex interleaved from `at` on [A].
 * @returns out
 */
export function uprightAt(
  out: Float64Array,
  at: number,
  field: UprightField,
  k: number,
  states: number,
  rho: number,
): Float64Array {
  const { z2, c, d, floats } = field;
  const nodes = z2.length;
  out.fill(0, at, at + 2 * states);
  for (let n = 0; n < nodes; n++) {
    const R = Math.sqrt(rho * rho + z2[n]!);
    // e^{−jkR}, inlined from expTable.
    const x = k * R;
    const i = Math.floor(x * STEPS_PER_RAD + 0.5);
    const r = x - i * STEP_RAD;
    const r2 = r * r;
    const tc = COS_TABLE[i & 1023]!;
    const ts = SIN_TABLE[i & 1023]!;
    const sr = r * (1 - r2 * (1 / 6 - r2 * (1 / 120)));
    const cr = 1 - r2 * (0.5 - r2 * (1 / 24));
    const ec = tc * cr - ts * sr;
    const es = -(ts * cr + tc * sr);
    const inverse = floats && R > 0 ? 1 / R : 0;
    for (let s = 0, p = 2 * n, q = at; s < states; s++, p += 2 * nodes, q += 2) {
      const re = c[p]! + d[p]! * inverse;
      const im = c[p + 1]! + d[p + 1]! * inverse;
      out[q] = out[q]! + re * ec - im * es;
      out[q + 1] = out[q + 1]! + re * es + im * ec;
    }
  }
  return out;
}
