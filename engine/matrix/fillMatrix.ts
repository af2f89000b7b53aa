import type { Basis } from "../basis/Basis.ts";
import type { PairKernel } from "../kernel/PairKernel.ts";
import type { PanelKernel } from "../kernel/PanelKernel.ts";
import type { Segments } from "../wires/Segments.ts";
import type { BlockStore } from "./BlockStore.ts";
import { type BlockSource, blockSize, nodeBlock, type Scales, scalesAt } from "./nodeBlock.ts";
import { type NodeUnknowns, nodeUnknowns } from "./nodeUnknowns.ts";
import type { Symmetry } from "./Symmetry.ts";
import { wireKeys, wirePairKey } from "./wirePairKey.ts";
import { type Panel, wirePanels } from "./wirePanels.ts";

/** Rows and columns of a square whose numbers stay at hand. */
const SQUARE = 32;
/** The block of a pair of wires that is kept nowhere. */
let scratch = new Float64Array(0);

export interface FillOptions {
  /** Blocks kept for this kernel and frequency; absent: nothing is kept, which is quickest for a few unlike wires. */
  readonly store?: BlockStore | undefined;
  readonly symmetry?: Symmetry | null | undefined;
  /** The order in which the unknowns stand, at each place which of them (see levelFirst); absent: as they are numbered. */
  readonly order?: Int32Array | undefined;
  /** The same kernels between points, by which what is well apart is integrated more quickly (see nodeBlock for the error). */
  readonly panels?: PanelKernel | undefined;
  /** Told now and then which part of the pairs is done, 0..1. */
  readonly onPart?: ((part: number) => void) | undefined;
}

/**
 * Fills the Galerkin impedance matrix of the mixed-potential thin-wire equation,
 *
 *   Z_mn = jωμ₀/4π ∫∫ f_m·G·f_n + 1/(4πjωε₀) [∫∫ f'_m K f'_n + ∫ K_s f'_m f'_n] + ∫ Z_i f_m f_n,
 *
 * f' the derivative along the wire, Z_i the conductor's internal impedance, K_s its sheath's term, G and K from the kernel.
 * Every pair of segments is integrated once, for the nodes at their ends; what two wires have with each other, node to node,
 * is then handed to the basis functions whose current passes there. With a store, pairs of wires of the same geometry are
 * integrated once, in this matrix and in later ones: a ring of N radials costs N/2 + 1 blocks, and a change of one upright
 * only its own.
 *
 * With a symmetry the matrix is that of its classes, Z_ab = Σ_i∈a Σ_j∈b w_i w_j Z_ij, and of the pairs of wires that are
 * carried into each other only one is looked at.
 *
 * @returns N × N complex, row-major, interleaved, symmetric to the last digit [ohm]; N classes where there is a symmetry
 */
export function fillMatrix(
  segments: Segments,
  basis: Basis,
  frequency_Hz: number,
  kernel: PairKernel,
  { store, symmetry, order, panels, onPart }: FillOptions = {},
): Float64Array {
  const N = symmetry?.count ?? basis.count;
  const half = new Float64Array(2 * N * N);
  const unknowns = nodeUnknowns(segments, basis, symmetry, order);
  const scales = scalesAt(frequency_Hz);
  const source: BlockSource = { kernel, scales, panels };
  const { firstOfWire } = segments;
  const wires = firstOfWire.length - 1;
  const keys = store && wireKeys(segments);
  const known: Panel[] = [];
  const panelsOf = (w: number): Panel => {
    known[w] ??= wirePanels(keys?.cuts[w], segments.length.subarray(firstOfWire[w]!, firstOfWire[w + 1]!));
    return known[w];
  };

  for (let a = 0; a < wires; a++) {
    onPart?.((a / wires) ** 2);
    for (let b = 0; b <= a; b++) {
      const times = symmetry ? timesMet(symmetry.images, wires, a, b) : 1;
      if (times === 0) continue;
      const n = firstOfWire[a + 1]! - firstOfWire[a]!;
      const m = firstOfWire[b + 1]! - firstOfWire[b]!;
      let block: Float64Array | undefined;
      let swapped = false;
      if (store && keys) {
        // A block may have been met the other way round: then rows are columns.
        const key = wirePairKey(keys, a, b);
        block = store.get(key);
        if (!block && a !== b) {
          block = store.get(wirePairKey(keys, b, a));
          swapped = block !== undefined;
        }
        if (!block) {
          block = new Float64Array(blockSize(n, m));
          nodeBlock(block, segments, a, b, source, panelsOf);
          store.set(key, block);
        }
      } else {
        if (scratch.length < blockSize(n, m)) scratch = new Float64Array(blockSize(n, m));
        block = scratch;
        nodeBlock(block, segments, a, b, source, panelsOf);
      }
      // The other triangle is added at the end, so a wire with itself counts by half.
      const weight = a === b ? 0.5 * times : times;
      scatter(half, N, unknowns, a, b, block, swapped ? 1 : m + 1, swapped ? n + 1 : 1, weight);
      if (a === b) addConductor(half, N, unknowns, segments, a, scales, weight);
    }
  }
  return addTransposed(half, N);
}

/** Hands a block to the unknowns: rows of wire a, columns of wire b, `down` and `across` its numbers' strides. */
function scatter(
  Z: Float64Array,
  N: number,
  { firstOfWire, node, unknown, factor }: NodeUnknowns,
  a: number,
  b: number,
  block: Float64Array,
  down: number,
  across: number,
  weight: number,
): void {
  const from = firstOfWire[b]!;
  const to = firstOfWire[b + 1]!;
  for (let p = firstOfWire[a]!; p < firstOfWire[a + 1]!; p++) {
    const row = N * unknown[p]!;
    const start = down * node[p]!;
    const w = weight * factor[p]!;
    for (let q = from; q < to; q++) {
      const f = w * factor[q]!;
      const z = 2 * (row + unknown[q]!);
      const at = 2 * (start + across * node[q]!);
      Z[z]! += f * block[at]!;
      Z[z + 1]! += f * block[at + 1]!;
    }
  }
}

/** What the conductor of a wire and its sheath add: ∫ Z_i f f of each segment by itself, L/3 for equal ramps and L/6 for unlike ones. */
function addConductor(
  Z: Float64Array,
  N: number,
  { firstOfWire, node, unknown, factor }: NodeUnknowns,
  segments: Segments,
  wire: number,
  { scalar }: Scales,
  weight: number,
): void {
  const { length, internal_ohmPerM, sheath } = segments;
  const first = segments.firstOfWire[wire]!;
  const count = segments.firstOfWire[wire + 1]! - first;
  for (let p = firstOfWire[wire]!; p < firstOfWire[wire + 1]!; p++)
    for (let q = firstOfWire[wire]!; q < firstOfWire[wire + 1]!; q++) {
      const i = node[p]!;
      const j = node[q]!;
      if (Math.abs(i - j) > 1) continue;
      const w = weight * factor[p]! * factor[q]!;
      const z = 2 * (N * unknown[p]! + unknown[q]!);
      // Segments both nodes are ends of.
      for (let s = Math.max(i, j, 1) - 1; s < Math.min(i, j, count - 1) + 1; s++) {
        const L = length[first + s]!;
        const overlap = w * L * (i === j ? 1 / 3 : 1 / 6);
        // f' = ±1/L: ∫ f' f' ds = ±1/L.
        const slopes = (w * scalar * (i === j ? 1 : -1)) / L;
        const at = 2 * (first + s);
        Z[z]! += overlap * internal_ohmPerM[at]! + slopes * sheath[at + 1]!;
        Z[z + 1]! += overlap * internal_ohmPerM[at + 1]! - slopes * sheath[at]!;
      }
    }
}

/** Z + Zᵀ, in place, square by square so that columns stay within reach. */
function addTransposed(Z: Float64Array, N: number): Float64Array {
  for (let top = 0; top < N; top += SQUARE)
    for (let left = 0; left <= top; left += SQUARE)
      for (let i = top; i < Math.min(top + SQUARE, N); i++) {
        const end = Math.min(left + SQUARE, i + 1);
        for (let j = left, p = 2 * (i * N + j), q = 2 * (j * N + i); j < end; j++, p += 2, q += 2 * N) {
          const re = Z[p]! + Z[q]!;
          const im = Z[p + 1]! + Z[q + 1]!;
          Z[p] = re;
          Z[q] = re;
          Z[p + 1] = im;
          Z[q + 1] = im;
        }
      }
  return Z;
}

/** How many pairs of wires a pair is carried into, or 0 where a pair looked at before is one of them. */
function timesMet(images: readonly Int32Array[], wires: number, a: number, b: number): number {
  const own = a * wires + b;
  let fixed = 0;
  for (const image of images) {
    const p = image[a]!;
    const q = image[b]!;
    const other = p > q ? p * wires + q : q * wires + p;
    if (other < own) return 0;
    if (other === own) fixed++;
  }
  return images.length / fixed;
}
