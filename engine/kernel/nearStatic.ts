import { obliqueStatic } from "./obliqueStatic.ts";
import { parallelStatic } from "./parallelStatic.ts";

/**
 * Moments of the static kernel 1/R between two straight segments near each other, in closed form along one or both:
 *
 *   out[pq] = ∫∫ u^p u'^q / R ds ds',  R² = d² + a²  (reduced kernel)
 *
 * Two wires of different thickness share the mean square radius, so that the pair is symmetric. The mean of 1/R over two
 * parallel tubes more than a diameter apart is that of their axes; on one axis it is the radius that counts.
 *
 * @param out  4 numbers, written: m00, m10, m01, m11 [m]
 * @param dx   start of the second segment minus start of the first [m], likewise dy, dz
 * Accuracy: 1e-7 of the moment (see parallelStatic, obliqueStatic).
 */
export function nearStatic(
  out: Float64Array,
  L1: number,
  sx: number,
  sy: number,
  sz: number,
  radius1: number,
  L2: number,
  tx: number,
  ty: number,
  tz: number,
  radius2: number,
  dx: number,
  dy: number,
  dz: number,
): Float64Array {
  const a2 = 0.5 * (radius1 * radius1 + radius2 * radius2);
  const dot = sx * tx + sy * ty + sz * tz;
  if (1 - Math.abs(dot) >= 1e-12) return obliqueStatic(out, L1, sx, sy, sz, L2, tx, ty, tz, dx, dy, dz, a2);
  const along = dx * sx + dy * sy + dz * sz;
  const px = dx - along * sx;
  const py = dy - along * sy;
  const pz = dz - along * sz;
  const d2 = px * px + py * py + pz * pz;
  const rho = Math.sqrt(d2 > 4 * a2 ? d2 : d2 + a2);
  if (dot > 0) return parallelStatic(out, L1, L2, along, rho);
  // Opposite sense: measure the second segment from its other end, then u' → 1 − u'.
  parallelStatic(out, L1, L2, along - L2, rho);
  out[2] = out[0]! - out[2]!;
  out[3] = out[1]! - out[3]!;
  return out;
}
