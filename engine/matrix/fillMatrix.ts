import type { Basis } from "../basis/Basis.ts";
import { EPS0_FPerM, MU0_HPerM } from "../constants.ts";
import { PAIR_SIZE, type PairKernel } from "../kernel/PairKernel.ts";
import type { Segments } from "../wires/Segments.ts";
import type { BlockStore } from "./BlockStore.ts";
import type { Symmetry } from "./Symmetry.ts";
import { wireCutKeys, wirePairKey } from "./wirePairKey.ts";

const single = new Float64Array(PAIR_SIZE);

/**
 * Fills the Galerkin impedance matrix of the mixed-potential thin-wire equation,
 *
 *   Z_mn = jωμ₀/4π ∫∫ f_m·G·f_n + 1/(4πjωε₀) [∫∫ f'_m K f'_n + ∫ K_s f'_m f'_n] + ∫ Z_i f_m f_n,
 *
 * f' the derivative along the wire, Z_i the conductor's internal impedance, K_s its sheath's term, G and K from the kernel.
 * Every pair of segments is integrated once and its ramps are handed to all basis functions they belong to, so Z is
 * symmetric but for the order in which sums are rounded. With a store, pairs of wires of the same geometry are integrated once, in this
 * matrix and in later ones: a ring of N radials costs N/2 + 1 blocks, and a change of one upright only its own.
 *
 * With a symmetry the matrix is that of its classes, Z_ab = Σ_i∈a Σ_j∈b w_i w_j Z_ij, and of the pairs of wires that are
 * carried into each other only one is looked at.
 *
 * @param store blocks kept for this kernel; absent: nothing is kept, which is quickest for a few unlike wires
 * @param onPart told now and then which part of the pairs is done, 0..1
 * @returns N × N complex, row-major, interleaved [ohm]; N classes where there is a symmetry
 */
export function fillMatrix(
  segments: Segments,
  basis: Basis,
  frequency_Hz: number,
  kernel: PairKernel,
  store?: BlockStore,
  symmetry?: Symmetry | null,
  onPart?: (part: number) => void,
): Float64Array {
  const N = symmetry?.count ?? basis.count;
  const Z = new Float64Array(2 * N * N);
  const add = symmetry
    ? scatterer(Z, N, segments, basis, frequency_Hz, symmetry.classOf, symmetry.weight)
    : scatterer(Z, N, segments, basis, frequency_Hz);
  const { firstOfWire } = segments;
  const wires = firstOfWire.length - 1;
  const keys = store ? wireCutKeys(segments) : [];

  for (let a = 0; a < wires; a++) {
    onPart?.((a / wires) ** 2);
    const a0 = firstOfWire[a]!;
    const a1 = firstOfWire[a + 1]!;
    for (let b = 0; b <= a; b++) {
      const times = symmetry ? timesMet(symmetry.images, wires, a, b) : 1;
      if (times === 0) continue;
      const b0 = firstOfWire[b]!;
      const b1 = firstOfWire[b + 1]!;
      if (!store) {
        for (let s = a0; s < a1; s++)
          for (let t = b0; t < (a === b ? s + 1 : b1); t++) {
            kernel(single, 0, segments, s, t);
            add(s, t, single, 0, false, times);
          }
        continue;
      }
      // A block may have been met the other way round: then rows are columns and u is u'.
      const key = wirePairKey(segments, keys, a, b);
      let block = store.get(key);
      let swapped = false;
      if (!block) {
        block = store.get(wirePairKey(segments, keys, b, a));
        swapped = block !== undefined;
      }
      if (!block) {
        block = new Float64Array(PAIR_SIZE * (a1 - a0) * (b1 - b0));
        for (let s = a0, at = 0; s < a1; s++)
          for (let t = b0; t < b1; t++, at += PAIR_SIZE) if (a !== b || t <= s) kernel(block, at, segments, s, t);
        store.set(key, block);
      }
      const width = swapped ? a1 - a0 : b1 - b0;
      for (let s = a0; s < a1; s++)
        for (let t = b0; t < (a === b ? s + 1 : b1); t++) {
          const row = swapped ? t - b0 : s - a0;
          const column = swapped ? s - a0 : t - b0;
          add(s, t, block, PAIR_SIZE * (row * width + column), swapped, times);
        }
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

/** Hands the moments of one pair of segments to the basis functions that have a ramp on each. */
function scatterer(
  Z: Float64Array,
  N: number,
  segments: Segments,
  basis: Basis,
  frequency_Hz: number,
  classOf?: Int32Array,
  weight?: Float64Array,
) {
  const omega = 2 * Math.PI * frequency_Hz;
  const vector = (omega * MU0_HPerM) / (4 * Math.PI);
  const scalar = 1 / (4 * Math.PI * omega * EPS0_FPerM);
  const { length, internal_ohmPerM, sheath } = segments;
  const { halfBasis, halfEnd, halfSign, halvesOf, firstHalf } = basis;
  return (s: number, t: number, m: Float64Array, at: number, swapped: boolean, times: number) => {
    const v00 = m[at]!;
    const v10 = m[at + (swapped ? 2 : 1)]!;
    const v01 = m[at + (swapped ? 1 : 2)]!;
    const v11 = m[at + 3]!;
    const w00 = m[at + 4]!;
    const w10 = m[at + (swapped ? 6 : 5)]!;
    const w01 = m[at + (swapped ? 5 : 6)]!;
    const w11 = m[at + 7]!;
    const perArea = scalar / (length[s]! * length[t]!);
    const sr = perArea * m[at + 8]!;
    const si = perArea * m[at + 9]!;
    for (let a = firstHalf[s]!; a < firstHalf[s + 1]!; a++) {
      const hs = halvesOf[a]!;
      const es = halfEnd[hs]!;
      for (let b = firstHalf[t]!; b < firstHalf[t + 1]!; b++) {
        const ht = halvesOf[b]!;
        const et = halfEnd[ht]!;
        const sign = halfSign[hs]! * halfSign[ht]!;
        // Ramp u where the function is 1 at the end, 1 − u where it is 1 at the start.
        const re = es ? (et ? v11 : v10 - v11) : et ? v01 - v11 : v00 - v10 - v01 + v11;
        const im = es ? (et ? w11 : w10 - w11) : et ? w01 - w11 : w00 - w10 - w01 + w11;
        const slope = es === et ? 1 : -1;
        // j·vector·(re + j im) − j·(sr + j si)
        let zr = sign * (slope * si - vector * im);
        let zi = sign * (vector * re - slope * sr);
        if (s === t) {
          // ∫ f f ds along one segment: L/3 for equal ramps, L/6 for opposite ones.
          const overlap = sign * length[s]! * (es === et ? 1 / 3 : 1 / 6);
          zr += overlap * internal_ohmPerM[2 * s]!;
          zi += overlap * internal_ohmPerM[2 * s + 1]!;
          // f' = ±1/L: ∫ f' f' ds = ±1/L.
          const slopes = (sign * slope * scalar) / length[s]!;
          zr += slopes * sheath[2 * s + 1]!;
          zi -= slopes * sheath[2 * s]!;
        }
        let i = halfBasis[hs]!;
        let j = halfBasis[ht]!;
        if (classOf && weight) {
          const w = times * weight[i]! * weight[j]!;
          i = classOf[i]!;
          j = classOf[j]!;
          if (i < 0 || j < 0) continue;
          zr *= w;
          zi *= w;
        }
        Z[2 * (i * N + j)]! += zr;
        Z[2 * (i * N + j) + 1]! += zi;
        if (s !== t) {
          Z[2 * (j * N + i)]! += zr;
          Z[2 * (j * N + i) + 1]! += zi;
        }
      }
    }
  };
}
