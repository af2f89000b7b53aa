import { EPS0_FPerM, MU0_HPerM } from "../constants.ts";
import { PAIR_SIZE, type PairKernel } from "../kernel/PairKernel.ts";
import type { Segments } from "../wires/Segments.ts";

const m = new Float64Array(PAIR_SIZE);

/** What the two integrals of the mixed-potential equation are multiplied by, but for j and 1/j. */
export interface Scales {
  /** ωμ₀/4π [ohm/m]. */
  readonly vector: number;
  /** 1/(4πωε₀) [ohm·m]. */
  readonly scalar: number;
}

export function scalesAt(frequency_Hz: number): Scales {
  const omega = 2 * Math.PI * frequency_Hz;
  return { vector: (omega * MU0_HPerM) / (4 * Math.PI), scalar: 1 / (4 * Math.PI * omega * EPS0_FPerM) };
}

/** Numbers the block of two wires takes, from their numbers of segments. */
export const blockSize = (n: number, m: number) => 2 * (n + 1) * (m + 1);

/**
 * Impedance between the nodes of two wires of n and m segments, ends included:
 *
 *   B_ij = jωμ₀/4π ∫∫ h_i·G·h_j + 1/(4πjωε₀) ∫∫ h'_i K h'_j,
 *
 * h_i the current that is 1 at node i, along the wire's tangent, and falls to 0 at the nodes beside it: a triangle, at either
 * end of the wire half of one. What conductor and sheath add is left out, so that B is the geometry's and the
 * surroundings' alone.
 *
 * @param out (n + 1) × (m + 1) complex, row-major, interleaved, written [ohm]; of a wire with itself symmetric
 */
export function nodeBlock(
  out: Float64Array,
  segments: Segments,
  a: number,
  b: number,
  kernel: PairKernel,
  scales: Scales,
): void {
  const { firstOfWire } = segments;
  const a0 = firstOfWire[a]!;
  const a1 = firstOfWire[a + 1]!;
  const b0 = firstOfWire[b]!;
  const b1 = firstOfWire[b + 1]!;
  out.fill(0, 0, blockSize(a1 - a0, b1 - b0));
  const width = b1 - b0 + 1;
  for (let s = a0; s < a1; s++)
    for (let t = b0; t < (a === b ? s + 1 : b1); t++)
      addPair(out, segments, s, t, (s - a0) * width + t - b0, width, kernel, scales);
  if (a === b) addTransposed(out, a1 - a0 + 1);
}

/** Adds what two segments have with each other to the four pairs of nodes at their ends; half of a segment with itself. */
function addPair(
  out: Float64Array,
  segments: Segments,
  s: number,
  t: number,
  row: number,
  width: number,
  kernel: PairKernel,
  scales: Scales,
): void {
  const { length } = segments;
  kernel(m, 0, segments, s, t);
  const half = s === t ? 0.5 : 1;
  const vector = half * scales.vector;
  const perArea = (half * scales.scalar) / (length[s]! * length[t]!);
  const r11 = vector * m[3]!;
  const r10 = vector * m[1]! - r11;
  const r01 = vector * m[2]! - r11;
  const r00 = vector * m[0]! - r11 - r10 - r01;
  const i11 = vector * m[7]!;
  const i10 = vector * m[5]! - i11;
  const i01 = vector * m[6]! - i11;
  const i00 = vector * m[4]! - i11 - i10 - i01;
  const sr = perArea * m[8]!;
  const si = perArea * m[9]!;
  // j (r + j i) − j·(±1)(sr + j si): charges of unlike sign where one node is a start and the other an end.
  const p = 2 * row;
  const q = p + 2 * width;
  out[p]! += si - i00;
  out[p + 1]! += r00 - sr;
  out[p + 2]! -= si + i01;
  out[p + 3]! += r01 + sr;
  out[q]! -= si + i10;
  out[q + 1]! += r10 + sr;
  out[q + 2]! += si - i11;
  out[q + 3]! += r11 - sr;
}

/** L + Lᵀ of what pairs s > t and half of s = t left. */
function addTransposed(out: Float64Array, n: number): void {
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++)
      for (let part = 0; part < 2; part++) {
        const p = 2 * (i * n + j) + part;
        const q = 2 * (j * n + i) + part;
        const sum = out[p]! + out[q]!;
        out[p] = sum;
        out[q] = sum;
      }
}
