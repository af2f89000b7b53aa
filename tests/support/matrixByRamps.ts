import type { Basis } from "../../engine/basis/Basis.ts";
import { EPS0_FPerM, MU0_HPerM } from "../../engine/constants.ts";
import { PAIR_SIZE, type PairKernel } from "../../engine/kernel/PairKernel.ts";
import type { Segments } from "../../engine/wires/Segments.ts";

/**
 * The impedance matrix straight from its definition: for every two functions each half of the one with each half of the other,
 *
 *   Z_mn = jωμ₀/4π ∫∫ f_m·G·f_n + 1/(4πjωε₀) [∫∫ f'_m K f'_n + ∫ K_s f'_m f'_n] + ∫ Z_i f_m f_n,
 *
 * nothing kept, nothing taken over from one pair to another.
 */
export function matrixByRamps(
  segments: Segments,
  basis: Basis,
  frequency_Hz: number,
  kernel: PairKernel,
): Float64Array {
  const omega = 2 * Math.PI * frequency_Hz;
  const vector = (omega * MU0_HPerM) / (4 * Math.PI);
  const scalar = 1 / (4 * Math.PI * omega * EPS0_FPerM);
  const N = basis.count;
  const Z = new Float64Array(2 * N * N);
  const { length, internal_ohmPerM, sheath } = segments;
  const { halfBasis, halfSegment, halfEnd, halfSign } = basis;
  const m = new Float64Array(PAIR_SIZE);
  for (let g = 0; g < basis.halfCount; g++)
    for (let h = 0; h < basis.halfCount; h++) {
      const s = halfSegment[g]!;
      const t = halfSegment[h]!;
      // Closed forms are taken along one of the two and differ in their last digits when roles change: the later goes first.
      kernel(m, 0, segments, Math.max(s, t), Math.min(s, t));
      if (s < t) for (const i of [1, 5]) [m[i], m[i + 1]] = [m[i + 1]!, m[i]!];
      const sign = halfSign[g]! * halfSign[h]!;
      const slopes = halfEnd[g] === halfEnd[h] ? 1 : -1;
      // Each ramp is c + d u: u where the function is 1 at the segment's end, 1 − u where it is 1 at its start.
      const [cs, ds] = halfEnd[g] ? [0, 1] : [1, -1];
      const [ct, dt] = halfEnd[h] ? [0, 1] : [1, -1];
      const [re, im] = [0, 4].map(
        (part) => cs * ct * m[part]! + ds * ct * m[part + 1]! + cs * dt * m[part + 2]! + ds * dt * m[part + 3]!,
      ) as [number, number];
      const perArea = (slopes * scalar) / (length[s]! * length[t]!);
      let zr = perArea * m[9]! - vector * im;
      let zi = vector * re - perArea * m[8]!;
      if (s === t) {
        const overlap = length[s]! * (slopes > 0 ? 1 / 3 : 1 / 6);
        zr += overlap * internal_ohmPerM[2 * s]! + ((slopes * scalar) / length[s]!) * sheath[2 * s + 1]!;
        zi += overlap * internal_ohmPerM[2 * s + 1]! - ((slopes * scalar) / length[s]!) * sheath[2 * s]!;
      }
      const at = 2 * (halfBasis[g]! * N + halfBasis[h]!);
      Z[at]! += sign * zr;
      Z[at + 1]! += sign * zi;
    }
  return Z;
}
