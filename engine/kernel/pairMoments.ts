import { gaussLegendre } from "../quad/gaussLegendre.ts";
import { COS_TABLE, SIN_TABLE, STEP_RAD, STEPS_PER_RAD } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import { nearStatic } from "./nearStatic.ts";

/** Centre distance over the longer segment above which 2 × 2 points do. */
export const FAR_RATIO = 12;
/** … and above which 3 × 3 points do; below it the static part is taken in closed form. */
export const MIDDLE_RATIO = 4.5;

const rule = { two: gaussLegendre(2), three: gaussLegendre(3), four: gaussLegendre(4) };
const moments = new Float64Array(4);

/**
 * Moments of the free-space kernel g = e^{−jkR}/R between two straight segments:
 *
 *   out[pq] = ∫∫ u^p u'^q g ds ds',  u, u' ∈ 0..1 along each segment,  p, q ∈ {0, 1}
 *
 * Segments that are near have their static part 1/R, with the wire's radius in R² = d² + a² (reduced kernel), taken in
 * closed form along the source and, for parallel ones, along the observer too; the rest (e^{−jkR} − 1)/R is smooth and
 * is taken from filament to filament, so that the real part of the matrix is exactly the power radiated by filaments.
 *
 * Accuracy: quadrature error below 1e-5 of the moment, except for a segment on itself that is longer than a ninetieth of
 * a wavelength, where it grows as (kL)² to 1e-4 at a twentieth; the closed forms to ten digits. Reduced kernel and filament
 * radiation neglect terms of order (ka)² and a/length.
 *
 * @param out     8 numbers, written: Re m00, m10, m01, m11, then Im [m]
 * @param mirror  take segment t as its mirror image in z = 0 (its parameter still runs from its start)
 * @param k       wavenumber [rad/m]
 */
export function pairMoments(
  out: Float64Array,
  segments: Segments,
  s: number,
  t: number,
  mirror: boolean,
  k: number,
): Float64Array {
  const { start, tangent, length, radius } = segments;
  const Ls = length[s]!;
  const Lt = length[t]!;
  const sx = tangent[3 * s]!;
  const sy = tangent[3 * s + 1]!;
  const sz = tangent[3 * s + 2]!;
  const tx = tangent[3 * t]!;
  const ty = tangent[3 * t + 1]!;
  const tz = mirror ? -tangent[3 * t + 2]! : tangent[3 * t + 2]!;
  // Start of t seen from the start of s.
  const dx = start[3 * t]! - start[3 * s]!;
  const dy = start[3 * t + 1]! - start[3 * s + 1]!;
  const dz = (mirror ? -start[3 * t + 2]! : start[3 * t + 2]!) - start[3 * s + 2]!;

  const cx = dx + 0.5 * (Lt * tx - Ls * sx);
  const cy = dy + 0.5 * (Lt * ty - Ls * sy);
  const cz = dz + 0.5 * (Lt * tz - Ls * sz);
  const ratio = Math.sqrt(cx * cx + cy * cy + cz * cz) / (Ls > Lt ? Ls : Lt);
  const near = ratio <= MIDDLE_RATIO;
  const kL = k * (Ls > Lt ? Ls : Lt);
  // The smooth rest of a near pair is smooth on the scale of a wavelength, not of the segment.
  const { node, weight } = near
    ? kL < 0.15
      ? rule.two
      : kL < 0.4
        ? rule.three
        : rule.four
    : ratio > FAR_RATIO
      ? rule.two
      : rule.three;
  const q = node.length;

  let r00 = 0;
  let r10 = 0;
  let r01 = 0;
  let r11 = 0;
  let i00 = 0;
  let i10 = 0;
  let i01 = 0;
  let i11 = 0;
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
      const v = node[j]! * Lt;
      const x = ax + v * tx;
      const y = ay + v * ty;
      const z = az + v * tz;
      const R = Math.sqrt(x * x + y * y + z * z);
      const kR = k * R;
      const w = weight[j]!;
      let er: number;
      let ei: number;
      // Table sine and cosine, inlined from special/expTable.
      const n = (kR * STEPS_PER_RAD + 0.5) | 0;
      const d = kR - n * STEP_RAD;
      const d2 = d * d;
      const c0 = COS_TABLE[n & 1023]!;
      const s0 = SIN_TABLE[n & 1023]!;
      const sd = d * (1 - d2 * (1 / 6 - d2 * (1 / 120)));
      const cd = d2 * (0.5 - d2 * (1 / 24));
      if (near) {
        // (e^{−jkR} − 1)/R; at small kR by its series, since cos kR − 1 cancels.
        if (kR < 0.05) {
          const z = kR * kR;
          er = -0.5 * k * kR * w * (1 - z * (1 / 12 - z / 360));
          ei = -k * w * (1 - z * (1 / 6 - z / 120));
        } else {
          const f = w / R;
          er = f * (c0 - c0 * cd - s0 * sd - 1);
          ei = -f * (s0 - s0 * cd + c0 * sd);
        }
      } else {
        const f = w / R;
        er = f * (c0 - c0 * cd - s0 * sd);
        ei = -f * (s0 - s0 * cd + c0 * sd);
      }
      gr += er;
      gi += ei;
      hr += node[j]! * er;
      hi += node[j]! * ei;
    }
    const w = weight[i]!;
    r00 += w * gr;
    i00 += w * gi;
    r10 += w * u * gr;
    i10 += w * u * gi;
    r01 += w * hr;
    i01 += w * hi;
    r11 += w * u * hr;
    i11 += w * u * hi;
  }
  const area = Ls * Lt;
  out[0] = area * r00;
  out[1] = area * r10;
  out[2] = area * r01;
  out[3] = area * r11;
  out[4] = area * i00;
  out[5] = area * i10;
  out[6] = area * i01;
  out[7] = area * i11;
  if (!near) return out;

  const m = nearStatic(moments, Ls, sx, sy, sz, radius[s]!, Lt, tx, ty, tz, radius[t]!, dx, dy, dz);
  out[0] += m[0]!;
  out[1] += m[1]!;
  out[2] += m[2]!;
  out[3] += m[3]!;
  return out;
}
