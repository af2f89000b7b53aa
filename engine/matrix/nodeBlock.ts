import { EPS0_FPerM, MU0_HPerM } from "../constants.ts";
import { PAIR_SIZE, type PairKernel } from "../kernel/PairKernel.ts";
import type { PanelKernel } from "../kernel/PanelKernel.ts";
import type { Segments } from "../wires/Segments.ts";
import { addPanels } from "./addPanels.ts";
import { panelGap } from "./panelGap.ts";
import { panelPoints } from "./panelPoints.ts";
import type { Panel } from "./wirePanels.ts";

/** Pairs of segments from which on panels are looked at. */
const WORTH = 12;
/** Pairs of points that cost as much as a pair of segments. */
const WORTH_POINTS = 4;

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

/** What a block is made from. */
export interface BlockSource {
  readonly kernel: PairKernel;
  readonly scales: Scales;
  /** Serves panels of segments that are well apart, where given. */
  readonly panels?: PanelKernel | undefined;
}

/**
 * Impedance between the nodes of two wires of n and m segments, ends included:
 *
 *   B_ij = jωμ₀/4π ∫∫ h_i·G·h_j + 1/(4πjωε₀) ∫∫ h'_i K h'_j,
 *
 * h_i the current that is 1 at node i, along the wire's tangent, and falls to 0 at the nodes beside it: a triangle, at either
 * end of the wire half of one. What conductor and sheath add is left out, so that B is the geometry's and the
 * surroundings' alone.
 *
 * With `panels` the wires are halved until two pieces are well apart or have few segments. Those apart are joined through a few
 * points of each (addPanels); the others segment by segment.
 *
 * Accuracy: that of `kernel`; with `panels` besides 5e-5 of 1/gap in the kernels between pieces `gap` apart, which is below 1e-6 of
 *   what a node has with itself.
 *
 * @param out (n + 1) × (m + 1) complex, row-major, interleaved, written [ohm]; of a wire with itself symmetric
 */
export function nodeBlock(
  out: Float64Array,
  segments: Segments,
  a: number,
  b: number,
  source: BlockSource,
  panelsOf: (wire: number) => Panel,
): void {
  const { firstOfWire } = segments;
  const a0 = firstOfWire[a]!;
  const b0 = firstOfWire[b]!;
  const n = firstOfWire[a + 1]! - a0;
  const m = firstOfWire[b + 1]! - b0;
  out.fill(0, 0, blockSize(n, m));
  if (!source.panels || n * m < WORTH) addSegments(out, m + 1, segments, a0, 0, n, b0, 0, m, source);
  else if (a === b) addOwn(out, m + 1, segments, a0, panelsOf(a), source);
  else addApart(out, m + 1, segments, a0, panelsOf(a), b0, panelsOf(b), source);
  if (a === b) addTransposed(out, n + 1);
}

/** A panel with itself, the pairs on and below the diagonal. */
function addOwn(
  out: Float64Array,
  width: number,
  segments: Segments,
  s: number,
  panel: Panel,
  source: BlockSource,
): void {
  const { first, last } = panel;
  if ((last - first) ** 2 < WORTH) {
    addSegments(out, width, segments, s, first, last, s, first, last, source);
    return;
  }
  const [one, other] = panel.halves();
  addOwn(out, width, segments, s, one, source);
  addOwn(out, width, segments, s, other, source);
  addApart(out, width, segments, s, other, s, one, source);
}

/** Two panels that have no segment in common, of wires that begin with segments s and t. */
function addApart(
  out: Float64Array,
  width: number,
  segments: Segments,
  s: number,
  one: Panel,
  t: number,
  other: Panel,
  source: BlockSource,
): void {
  const { panels } = source;
  const n = one.last - one.first;
  const m = other.last - other.first;
  if (panels && n * m >= WORTH) {
    const toS = one.from_m + one.length_m;
    const toT = other.from_m + other.length_m;
    const medium = panels.medium(segments, s, one.from_m, toS, t, other.from_m, toT);
    const gap_m = medium ? panelGap(segments, s, one, t, other) : 0;
    const p = medium ? panelPoints(one.length_m, gap_m, medium) : 0;
    const q = medium ? panelPoints(other.length_m, gap_m, medium) : 0;
    if (p > 0 && q > 0) {
      if (p * q <= WORTH_POINTS * n * m) {
        addPanels(out, width, segments, s, one, p, t, other, q, panels, source.scales);
        return;
      }
    } else if (n > 1 && (m === 1 || one.length_m > other.length_m)) {
      for (const half of one.halves()) addApart(out, width, segments, s, half, t, other, source);
      return;
    } else {
      for (const half of other.halves()) addApart(out, width, segments, s, one, t, half, source);
      return;
    }
  }
  addSegments(out, width, segments, s, one.first, one.last, t, other.first, other.last, source);
}

/** Segments s0 … s1 − 1 of one wire with t0 … t1 − 1 of another, one by one; of one wire the later with the earlier. */
function addSegments(
  out: Float64Array,
  width: number,
  segments: Segments,
  s: number,
  s0: number,
  s1: number,
  t: number,
  t0: number,
  t1: number,
  { kernel, scales }: BlockSource,
): void {
  for (let i = s0; i < s1; i++) {
    const end = s === t ? Math.min(t1, i + 1) : t1;
    for (let j = t0; j < end; j++) addPair(out, segments, s + i, t + j, i * width + j, width, kernel, scales);
  }
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
