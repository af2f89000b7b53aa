import { gaussLegendre } from "../quad/gaussLegendre.ts";
import type { Segments } from "../wires/Segments.ts";
import { nearStatic } from "./nearStatic.ts";
import { FAR_RATIO, MIDDLE_RATIO } from "./pairMoments.ts";

/** |k| times the longer segment up to which so many points serve: see `pointsFor`. */
const POINTS = [
  [0.4, 0],
  [1, 1],
  [2.5, 3],
  [5, 6],
  [12, 10],
] as const;
const MOST_POINTS = 24;
const rules = Array.from({ length: MOST_POINTS + 1 }, (_, n) => gaussLegendre(Math.max(1, n)));
const moments = new Float64Array(4);

/** Points by which the phase and decay of e^{−jkR} over a segment exceed what its distance asks for. */
function pointsFor(kL: number): number {
  for (const [most, extra] of POINTS) if (kL <= most) return extra;
  return MOST_POINTS - 4;
}

/**
 * The moments of `pairMoments` in a medium that absorbs: g = e^{−jkR}/R with a complex k, as between wires in soil.
 *
 *   out[pq] = ∫∫ u^p u'^q g ds ds',  u, u' ∈ 0..1 along each segment,  p, q ∈ {0, 1}
 *
 * Near pairs have 1/R in closed form and (e^{−jkR} − 1)/R by a product rule, whose order rises with |k| times the longer
 * segment; far ones go by the product rule alone. A segment on itself or, level, on its own image, where that rest has a
 * kink or nearly so, goes by one integral over x = |u − u'|.
 *
 * Accuracy: 6e-5 of what the moment would be without phase and decay, up to |k|L = 4, 2e-4 up to 8; of two that cross within a
 *   twentieth of their length, some 1e-3 |k|L. Longer segments are not good for their currents either.
 *
 * @param out      8 numbers, written: Re m00, m10, m01, m11, then Im [m]
 * @param mirror   take segment t as its mirror image in z = 0
 * @param kRe,kIm  wavenumber of the medium [rad/m], kIm ≤ 0
 */
export function lossyMoments(
  out: Float64Array,
  segments: Segments,
  s: number,
  t: number,
  mirror: boolean,
  kRe: number,
  kIm: number,
): Float64Array {
  const { start, tangent, length, radius } = segments;
  const flip = mirror ? -1 : 1;
  const Ls = length[s]!;
  const Lt = length[t]!;
  const sx = tangent[3 * s]!;
  const sy = tangent[3 * s + 1]!;
  const sz = tangent[3 * s + 2]!;
  const tx = tangent[3 * t]!;
  const ty = tangent[3 * t + 1]!;
  const tz = flip * tangent[3 * t + 2]!;
  const dx = start[3 * t]! - start[3 * s]!;
  const dy = start[3 * t + 1]! - start[3 * s + 1]!;
  const dz = flip * start[3 * t + 2]! - start[3 * s + 2]!;
  const cx = dx + 0.5 * (Lt * tx - Ls * sx);
  const cy = dy + 0.5 * (Lt * ty - Ls * sy);
  const cz = dz + 0.5 * (Lt * tz - Ls * sz);
  const longer = Math.max(Ls, Lt);
  const ratio = Math.sqrt(cx * cx + cy * cy + cz * cz) / longer;
  const near = ratio <= MIDDLE_RATIO;
  const size = Math.sqrt(kRe * kRe + kIm * kIm);
  const { node, weight } =
    rules[Math.min(MOST_POINTS, (near ? 4 : ratio > FAR_RATIO ? 2 : 3) + pointsFor(size * longer))]!;
  const q = node.length;

  out.fill(0, 0, 8);
  if (s === t && near && (!mirror || sz === 0)) onItself(out, Ls, Math.abs(dz), node, weight, size, kRe, kIm);
  else
    for (let i = 0; i < q; i++) {
      const u = node[i]!;
      const ax = dx - u * Ls * sx;
      const ay = dy - u * Ls * sy;
      const az = dz - u * Ls * sz;
      let gr = 0;
      let gi = 0;
      let hr = 0;
      let hi = 0;
      for (let j = 0; j < q; j++) {
        const v = node[j]!;
        const x = ax + v * Lt * tx;
        const y = ay + v * Lt * ty;
        const z = az + v * Lt * tz;
        const R = Math.sqrt(x * x + y * y + z * z);
        atDistance(R, size, kRe, kIm, near);
        const w = weight[j]!;
        gr += w * restRe;
        gi += w * restIm;
        hr += w * v * restRe;
        hi += w * v * restIm;
      }
      const w = weight[i]! * Ls * Lt;
      out[0]! += w * gr;
      out[1]! += w * u * gr;
      out[2]! += w * hr;
      out[3]! += w * u * hr;
      out[4]! += w * gi;
      out[5]! += w * u * gi;
      out[6]! += w * hi;
      out[7]! += w * u * hi;
    }
  if (!near) return out;
  const m = nearStatic(moments, Ls, sx, sy, sz, radius[s]!, Lt, tx, ty, tz, radius[t]!, dx, dy, dz);
  for (let p = 0; p < 4; p++) out[p]! += m[p]!;
  return out;
}

let restRe = 0;
let restIm = 0;
/** e^{−jkR}/R, or where `near` what is left of it without 1/R, into restRe, restIm. */
function atDistance(R: number, size: number, kRe: number, kIm: number, near: boolean): void {
  if (near && size * R < 0.02) {
    // (e^{w} − 1)/R = −jk (1 + w/2 + w²/6 + w³/24), w = −jkR: the difference cancels.
    const wr = kIm * R;
    const wi = -kRe * R;
    let pr = 1 / 6 + wr / 24;
    let pi = wi / 24;
    let a = 0.5 + wr * pr - wi * pi;
    pi = wr * pi + wi * pr;
    pr = a;
    a = 1 + wr * pr - wi * pi;
    pi = wr * pi + wi * pr;
    pr = a;
    // −jk (pr + j pi) = (kIm − j kRe)(pr + j pi)
    restRe = kIm * pr + kRe * pi;
    restIm = kIm * pi - kRe * pr;
    return;
  }
  const decay = Math.exp(kIm * R);
  restRe = (decay * Math.cos(kRe * R) - (near ? 1 : 0)) / R;
  restIm = (-decay * Math.sin(kRe * R)) / R;
}

/** The rest for a segment on itself or on one `apart` from it: ∫∫ u^p u'^q f(|u − u'|) = ∫ W_pq(x) f(x) dx, x from 0 to 1. */
function onItself(
  out: Float64Array,
  L: number,
  apart: number,
  node: ArrayLike<number>,
  weight: ArrayLike<number>,
  size: number,
  kRe: number,
  kIm: number,
): void {
  for (let i = 0; i < node.length; i++) {
    const x = node[i]!;
    atDistance(Math.sqrt(x * x * L * L + apart * apart), size, kRe, kIm, true);
    const y = 1 - x;
    const w = weight[i]! * L * L * y;
    const w11 = w * y * (x + (2 / 3) * y);
    out[0]! += 2 * w * restRe;
    out[1]! += w * restRe;
    out[2]! += w * restRe;
    out[3]! += w11 * restRe;
    out[4]! += 2 * w * restIm;
    out[5]! += w * restIm;
    out[6]! += w * restIm;
    out[7]! += w11 * restIm;
  }
}
