import type { Basis } from "../basis/Basis.ts";
import { EPS0_FPerM, MU0_HPerM } from "../constants.ts";
import { pairMoments } from "../kernel/pairMoments.ts";
import type { Segments } from "../wires/Segments.ts";

/**
 * What a ground adds to the interaction of two segments. Writes, for unit ramps u, u' along the segments,
 *   out[0..3] and out[4..7]: Re and Im of ∫∫ u^p u'^q t·G·t' ds ds'  (4π times the vector potential kernel, tangents in it)
 *   out[8], out[9]:          Re and Im of ∫∫ K ds ds'                 (4π times the scalar potential kernel)
 */
export type GroundMoments = (out: Float64Array, segments: Segments, s: number, t: number, k: number) => void;

const direct = new Float64Array(8);
const ground = new Float64Array(10);

/**
 * Fills the Galerkin impedance matrix of the mixed-potential thin-wire equation,
 *
 *   Z_mn = jωμ₀/4π ∫∫ f_m·f_n g + 1/(4πjωε₀) ∫∫ f'_m f'_n g + δ ∫ Z_i f_m f_n,   g = e^{−jkR}/R (and the ground's part)
 *
 * where f' is the derivative along the wire and Z_i the conductor's internal impedance.
 * Every pair of segments is integrated once and its ramps are handed to all basis functions they belong to, so Z is
 * symmetric to the last bit.
 *
 * @param ground what the ground adds; absent in free space
 * @returns N × N complex, row-major, interleaved [ohm]
 */
export function fillMatrix(
  segments: Segments,
  basis: Basis,
  frequency_Hz: number,
  k: number,
  groundMoments?: GroundMoments,
): Float64Array {
  const N = basis.count;
  const Z = new Float64Array(2 * N * N);
  const omega = 2 * Math.PI * frequency_Hz;
  const vector = (omega * MU0_HPerM) / (4 * Math.PI);
  const scalar = 1 / (4 * Math.PI * omega * EPS0_FPerM);
  const { tangent, length, internal_ohmPerM } = segments;
  const { halfBasis, halfEnd, halfSign, halvesOf, firstHalf } = basis;

  for (let s = 0; s < segments.count; s++) {
    for (let t = 0; t <= s; t++) {
      pairMoments(direct, segments, s, t, false, k);
      const dot =
        tangent[3 * s]! * tangent[3 * t]! +
        tangent[3 * s + 1]! * tangent[3 * t + 1]! +
        tangent[3 * s + 2]! * tangent[3 * t + 2]!;
      let v00 = dot * direct[0]!;
      let v10 = dot * direct[1]!;
      let v01 = dot * direct[2]!;
      let v11 = dot * direct[3]!;
      let w00 = dot * direct[4]!;
      let w10 = dot * direct[5]!;
      let w01 = dot * direct[6]!;
      let w11 = dot * direct[7]!;
      let sr = direct[0]!;
      let si = direct[4]!;
      if (groundMoments) {
        groundMoments(ground, segments, s, t, k);
        v00 += ground[0]!;
        v10 += ground[1]!;
        v01 += ground[2]!;
        v11 += ground[3]!;
        w00 += ground[4]!;
        w10 += ground[5]!;
        w01 += ground[6]!;
        w11 += ground[7]!;
        sr += ground[8]!;
        si += ground[9]!;
      }
      const perArea = scalar / (length[s]! * length[t]!);
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
          const slope = es === et ? perArea : -perArea;
          // j·vector·(re + j im) − j·scalar·(sr + j si)
          let zr = sign * (-vector * im + slope * si);
          let zi = sign * (vector * re - slope * sr);
          if (s === t) {
            // ∫ f f ds along one segment: L/3 for equal ramps, L/6 for opposite ones.
            const overlap = sign * length[s]! * (es === et ? 1 / 3 : 1 / 6);
            zr += overlap * internal_ohmPerM[2 * s]!;
            zi += overlap * internal_ohmPerM[2 * s + 1]!;
          }
          const m = halfBasis[hs]!;
          const n = halfBasis[ht]!;
          Z[2 * (m * N + n)]! += zr;
          Z[2 * (m * N + n) + 1]! += zi;
          if (s !== t) {
            Z[2 * (n * N + m)]! += zr;
            Z[2 * (n * N + m) + 1]! += zi;
          }
        }
      }
    }
  }
  return Z;
}
