import { gaussLegendre } from "../../quad/gaussLegendre.ts";
import type { Segments } from "../../wires/Segments.ts";
import { DISTANT, distantPair } from "./distantPair.ts";
import { parallelRemainder } from "./parallelRemainder.ts";
import type { Remainders } from "./Remainders.ts";

/** Distance to the image over the longer piece below which a piece that turns the corner is cut in two. */
const CUT_RATIO = 1.5;
/** Size of a piece, over 1/|k1|, below which the remainders are smooth however near the image. */
const SMOOTH = 0.3;
/** |k| times a piece above which it is cut for the phase and decay of g alone. */
const LONG = 2;
/** Most cuts of one pair: 2⁻²⁴ of a segment is below any height over soil that is allowed. */
const DEEPEST = 24;
const rules = [2, 3, 4, 5].map((n) => gaussLegendre(n));

const image = new Float64Array(8);
const kernel = new Float64Array(10);
/** Pieces still to do: u0, u1, v0, v1, depth. */
const stack = new Float64Array(5 * 4 * DEEPEST);

/**
 * Adds what a half space does to the interaction of two straight segments: what it reflects when both are in one medium,
 * all of it when one is in air and the other in soil:
 *
 *   V_pq += ∫∫ u^p u'^q [ t_h·t'_h I1 + t_z t'_z I4 + (t_z ρ̂·t'_h − ρ̂·t_h t'_z) I3 ] ds ds',   S += ∫∫ I2 ds ds'
 *
 * with I_k = S_k + A_k g (across the surface I4 is I1). The parts A1 g, A2 g and A4 g go through the closed forms of two
 * segments, t mirrored where the kernels are those of a reflection. The remainders S_k take a product rule. The corner term
 * A3 g ρ/(R + ζ), which is there only between upright and level currents, rises as 1/R: pieces are cut until each is small
 * against its distance. So they are without it, as long as they are not small against 1/|k1|, over which the remainders
 * change (a metre or less over good soil).
 * Near pairs that are parallel go by `parallelRemainder`, distant ones of any kind by `distantPair`.
 *
 * Accuracy: 1e-5 of the sum of the parts' sizes for the rules; the table's own error besides.
 *
 * @param out,at   see PairKernel
 * @param segments z counted away from the surface where both are in one medium: in soil, downwards
 * @param s,t      across the surface: s in air, t in soil
 */
export function halfSpacePair(
  out: Float64Array,
  at: number,
  segments: Segments,
  s: number,
  t: number,
  remainders: Remainders,
): void {
  const { start, tangent, length } = segments;
  const { staticPart: A, mirrored, k, k1 } = remainders;
  const Ls = length[s]!;
  const Lt = length[t]!;
  const sx = tangent[3 * s]!;
  const sy = tangent[3 * s + 1]!;
  const sz = tangent[3 * s + 2]!;
  const tx = tangent[3 * t]!;
  const ty = tangent[3 * t + 1]!;
  const tz = tangent[3 * t + 2]!;
  // How ζ grows along t: with its height where both are above, against it where t is below.
  const zetaPerT = mirrored ? tz : -tz;
  const depthStart = -start[3 * t + 2]!;
  const x0 = start[3 * s]! - start[3 * t]!;
  const y0 = start[3 * s + 1]! - start[3 * t + 1]!;
  const z0 = start[3 * s + 2]! + (mirrored ? start[3 * t + 2]! : depthStart);

  // Across, I4 is I1: upright currents then count with the level ones.
  const level = sx * tx + sy * ty + (mirrored ? 0 : sz * tz);
  const upright = mirrored ? sz * tz : 0;
  const corner = sz * sz * (tx * tx + ty * ty) + tz * tz * (sx * sx + sy * sy) > 1e-24;

  {
    const cx = x0 + 0.5 * (Ls * sx - Lt * tx);
    const cy = y0 + 0.5 * (Ls * sy - Lt * ty);
    const cz = z0 + 0.5 * (Ls * sz + Lt * zetaPerT);
    const ratio = Math.sqrt(cx * cx + cy * cy + cz * cz) / Math.max(Ls, Lt);
    if (ratio >= DISTANT) {
      distantPair(out, at, remainders, x0, y0, z0, depthStart, sx, sy, sz, Ls, tx, ty, tz, Lt, ratio);
      return;
    }
  }

  // What grows as 1/R.
  remainders.moments(image, segments, s, t);
  out[at + 8]! += A[2]! * image[0]! - A[3]! * image[4]!;
  out[at + 9]! += A[2]! * image[4]! + A[3]! * image[0]!;
  if (!mirrored)
    for (let p = 0; p < 4; p++) {
      out[at + p]! += level * (A[0]! * image[p]! - A[1]! * image[4 + p]!);
      out[at + 4 + p]! += level * (A[0]! * image[4 + p]! + A[1]! * image[p]!);
    }
  if (upright !== 0)
    for (let p = 0; p < 4; p++) {
      out[at + p]! += upright * (A[6]! * image[p]! - A[7]! * image[4 + p]!);
      out[at + 4 + p]! += upright * (A[6]! * image[4 + p]! + A[7]! * image[p]!);
    }

  const area = Ls * Lt;
  // Both level or both upright, and parallel: t's image then runs with s or against it. (Across, depth counts by itself.)
  const along = sx * tx + sy * ty - sz * tz;
  const parallel = !corner && 1 - Math.abs(along) < 1e-12 && (mirrored || sz === 0);
  let depth = 0;
  let top = 0;
  let u0 = 0;
  let u1 = 1;
  let v0 = 0;
  let v1 = 1;
  for (;;) {
    // Distance of the piece's middle from the mirrored middle of the other.
    const us = 0.5 * (u0 + u1) * Ls;
    const vt = 0.5 * (v0 + v1) * Lt;
    const mx = x0 + us * sx - vt * tx;
    const my = y0 + us * sy - vt * ty;
    const mz = z0 + us * sz + vt * zetaPerT;
    const du = (u1 - u0) * Ls;
    const dv = (v1 - v0) * Lt;
    const longer = Math.max(du, dv);
    const ratio = Math.sqrt(mx * mx + my * my + mz * mz) / longer;
    if (parallel && ratio < CUT_RATIO) {
      const sign = along > 0 ? 1 : -1;
      parallelRemainder(out, at, remainders, x0, y0, z0, depthStart, sx, sy, sz, sign, Ls, Lt, level, upright);
      return;
    }
    const sharp = ratio < CUT_RATIO && (corner || longer * k1 > SMOOTH);
    if ((sharp || longer * k > LONG) && depth < DEEPEST) {
      depth++;
      const half = top;
      top += 5;
      if (du >= dv) {
        const middle = 0.5 * (u0 + u1);
        stack[half] = middle;
        stack[half + 1] = u1;
        stack[half + 2] = v0;
        stack[half + 3] = v1;
        u1 = middle;
      } else {
        const middle = 0.5 * (v0 + v1);
        stack[half] = u0;
        stack[half + 1] = u1;
        stack[half + 2] = middle;
        stack[half + 3] = v1;
        v1 = middle;
      }
      stack[half + 4] = depth;
      continue;
    }

    const { node, weight } = rules[ratio > 8 ? 0 : ratio > 3 ? 1 : ratio > 1 ? 2 : 3]!;
    const q = node.length;
    const scale = area * (u1 - u0) * (v1 - v0);
    for (let i = 0; i < q; i++) {
      const u = u0 + (u1 - u0) * node[i]!;
      const ax = x0 + u * Ls * sx;
      const ay = y0 + u * Ls * sy;
      const az = z0 + u * Ls * sz;
      for (let j = 0; j < q; j++) {
        const v = v0 + (v1 - v0) * node[j]!;
        const x = ax - v * Lt * tx;
        const y = ay - v * Lt * ty;
        const zeta = az + v * Lt * zetaPerT;
        const rho = Math.sqrt(x * x + y * y);
        remainders.read(kernel, rho, zeta, depthStart - v * Lt * tz);
        const w = scale * weight[i]! * weight[j]!;
        let re = level * kernel[0]! + upright * kernel[6]!;
        let im = level * kernel[1]! + upright * kernel[7]!;
        if (corner && rho > 0) {
          // ρ̂ from source to observer.
          const turn = (sz * (x * tx + y * ty) - tz * (x * sx + y * sy)) / rho;
          const angle = rho / (Math.sqrt(rho * rho + zeta * zeta) + zeta);
          re += turn * (kernel[4]! + angle * (A[4]! * kernel[8]! - A[5]! * kernel[9]!));
          im += turn * (kernel[5]! + angle * (A[4]! * kernel[9]! + A[5]! * kernel[8]!));
        }
        re *= w;
        im *= w;
        out[at]! += re;
        out[at + 1]! += u * re;
        out[at + 2]! += v * re;
        out[at + 3]! += u * v * re;
        out[at + 4]! += im;
        out[at + 5]! += u * im;
        out[at + 6]! += v * im;
        out[at + 7]! += u * v * im;
        out[at + 8]! += w * kernel[2]!;
        out[at + 9]! += w * kernel[3]!;
      }
    }
    if (top === 0) return;
    top -= 5;
    u0 = stack[top]!;
    u1 = stack[top + 1]!;
    v0 = stack[top + 2]!;
    v1 = stack[top + 3]!;
    depth = stack[top + 4]!;
  }
}
