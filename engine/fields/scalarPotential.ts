import { EPS0_FPerM } from "../constants.ts";
import { PAIR_SIZE, type PairKernel } from "../kernel/PairKernel.ts";
import type { Segments } from "../wires/Segments.ts";

const pair = new Float64Array(PAIR_SIZE);

/**
 * Scalar potential of a segment's surface against what is far off, the mean over its length [V peak]:
 *
 *   Φ = j/(4πωε₀L) Σ_t (I_end − I_start)/L_t ∫∫ K ds ds',
 *
 * that is the potential of the charges −(dI/ds)/jω of all segments, as the impedance matrix has them, in the gauge that
 * the kernel's K belongs to (Lorenz's in air), and that of the segment's own sheath. Along a perfect conductor
 * dΦ/ds = −jωA, so that over a perfect plane the potential of a tip is the base's voltage less jω∫A ds.
 *
 * @param currents see `segmentCurrents` [A peak]
 * @param s        the segment; one that is short, as at a wire's end, has the potential of that end
 */
export function scalarPotential(
  segments: Segments,
  currents: Float64Array,
  kernel: PairKernel,
  frequency_Hz: number,
  s: number,
): { readonly re: number; readonly im: number } {
  const { length, sheath } = segments;
  let re = 0;
  let im = 0;
  for (let t = 0; t < segments.count; t++) {
    const slopeRe = (currents[4 * t + 2]! - currents[4 * t]!) / length[t]!;
    const slopeIm = (currents[4 * t + 3]! - currents[4 * t + 1]!) / length[t]!;
    kernel(pair, 0, segments, s, t);
    const own = s === t ? length[s]! : 0;
    const kRe = pair[8]! + own * sheath[2 * s]!;
    const kIm = pair[9]! + own * sheath[2 * s + 1]!;
    re += kRe * slopeRe - kIm * slopeIm;
    im += kRe * slopeIm + kIm * slopeRe;
  }
  const scale = 1 / (4 * Math.PI * 2 * Math.PI * frequency_Hz * EPS0_FPerM * length[s]!);
  return { re: -scale * im, im: scale * re };
}
