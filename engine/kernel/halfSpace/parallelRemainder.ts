import { gaussLegendre } from "../../quad/gaussLegendre.ts";
import type { Remainders } from "./Remainders.ts";

const { node, weight } = gaussLegendre(6);
const kernel = new Float64Array(10);
const breaks = new Float64Array(96);

/**
 * Adds the remainders of two segments of which one is parallel to the other's mirror image, both level or both upright:
 *
 *   V_pq += ∫∫ u^p u'^q (t_h·t'_h S1 + t_z t'_z S4) ds ds',   S += ∫∫ S2 ds ds'
 *
 * The kernels depend on x = s ∓ s' alone, so that the double integral is one over x with the weight
 *   W_pq(x) = ∫ u^p u'^q ds  along s ∓ s' = x,
 * a cubic at most, with kinks where an end of one segment passes an end of the other. S1 and S4 change over 1/|k1|, which
 * near good soil is far less than a segment: panels double outwards from the nearest approach.
 *
 * @param out,at          as for a PairKernel
 * @param dx,dy,dz        start of s minus start of the image of t [m]
 * @param depth           of t, where it is level in soil and s in air [m]
 * @param sx,sy,sz        direction of s
 * @param sign            +1 where the image of t runs along s, −1 where it runs against it
 * @param level,upright   t_h·t'_h and t_z t'_z
 * Accuracy: 1e-6 of the moment besides the table's error.
 */
export function parallelRemainder(
  out: Float64Array,
  at: number,
  remainders: Remainders,
  dx: number,
  dy: number,
  dz: number,
  depth: number,
  sx: number,
  sy: number,
  sz: number,
  sign: number,
  L1: number,
  L2: number,
  level: number,
  upright: number,
): void {
  const low = sign > 0 ? -L2 : 0;
  const high = sign > 0 ? L1 : L1 + L2;
  const nearest = -(dx * sx + dy * sy + dz * sz);
  const px = dx + nearest * sx;
  const py = dy + nearest * sy;
  const pz = dz + nearest * sz;
  const apart = Math.sqrt(px * px + py * py + pz * pz);
  // Nearer than a tenth of 1/|k1| the remainders are as good as constant.
  const first = Math.max(apart, 0.1 / remainders.k1);

  let n = 0;
  const put = (x: number) => {
    if (!(x >= low && x <= high)) return;
    let i = n++;
    while (i > 0 && breaks[i - 1]! > x) {
      breaks[i] = breaks[i - 1]!;
      i--;
    }
    breaks[i] = x;
  };
  put(low);
  put(sign > 0 ? 0 : L1);
  put(sign > 0 ? L1 - L2 : L2);
  put(high);
  put(nearest);
  const reach = Math.max(high - nearest, nearest - low);
  for (let step = first; step < reach && n < 88; step *= 2) {
    put(nearest - step);
    put(nearest + step);
  }

  for (let p = 0; p + 1 < n; p++) {
    const from = breaks[p]!;
    const width = breaks[p + 1]! - from;
    if (width <= 0) continue;
    for (let i = 0; i < node.length; i++) {
      const x = from + width * node[i]!;
      const a = Math.max(0, sign > 0 ? x : x - L2);
      const b = Math.min(L1, sign > 0 ? x + L2 : x);
      const f = width * weight[i]!;
      const w0 = b - a;
      const w1 = 0.5 * (b * b - a * a);
      const w2 = (b * b * b - a * a * a) * (1 / 3);
      const W00 = f * w0;
      const W10 = (f * w1) / L1;
      const W01 = (f * sign * (w1 - x * w0)) / L2;
      const W11 = (f * sign * (w2 - x * w1)) / (L1 * L2);
      const ex = dx + x * sx;
      const ey = dy + x * sy;
      remainders.read(kernel, Math.sqrt(ex * ex + ey * ey), dz + x * sz, depth);
      const re = level * kernel[0]! + upright * kernel[6]!;
      const im = level * kernel[1]! + upright * kernel[7]!;
      out[at]! += W00 * re;
      out[at + 1]! += W10 * re;
      out[at + 2]! += W01 * re;
      out[at + 3]! += W11 * re;
      out[at + 4]! += W00 * im;
      out[at + 5]! += W10 * im;
      out[at + 6]! += W01 * im;
      out[at + 7]! += W11 * im;
      out[at + 8]! += W00 * kernel[2]!;
      out[at + 9]! += W00 * kernel[3]!;
    }
  }
}
