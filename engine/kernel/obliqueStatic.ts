import { gaussLegendre } from "../quad/gaussLegendre.ts";

const { node, weight } = gaussLegendre(6);
const points = new Float64Array(160);

/**
 * Moments of 1/√(d² + a²) between two straight segments at an angle.
 *
 *   out[pq] = ∫∫ u^p u'^q / R du' … ds ds',  R² = |r(s) − r'(s')|² + a²
 *
 * Along the second segment in closed form; along the first by a 6-point Gauss rule on panels that shrink by three
 * towards the point nearest to the second segment, down to its distance, where the inner result has a logarithmic
 * peak. Panels are three lengths of their distance at most, which leaves a relative error below 1e-7.
 *
 * @param out  4 numbers, written: m00, m10, m01, m11 [m]
 * @param dx   start of the second segment minus start of the first [m], likewise dy, dz
 * @param a2   square of the radius [m²]
 */
export function obliqueStatic(
  out: Float64Array,
  L1: number,
  sx: number,
  sy: number,
  sz: number,
  L2: number,
  tx: number,
  ty: number,
  tz: number,
  dx: number,
  dy: number,
  dz: number,
  a2: number,
): Float64Array {
  // Point of the first segment nearest to the second: closest points of two lines, then clamped.
  const b = sx * tx + sy * ty + sz * tz;
  const ds = dx * sx + dy * sy + dz * sz;
  const dt = dx * tx + dy * ty + dz * tz;
  const clamp = (x: number, top: number) => (x < 0 ? 0 : x > top ? top : x);
  const v = clamp((b * ds - dt) / (1 - b * b), L2);
  const sNear = clamp(ds + b * v, L1);
  const vNear = clamp(b * sNear - dt, L2);
  const ex = dx + vNear * tx - sNear * sx;
  const ey = dy + vNear * ty - sNear * sy;
  const ez = dz + vNear * tz - sNear * sz;
  const scale = Math.sqrt(ex * ex + ey * ey + ez * ez + a2);

  // Panel ends: outwards from the nearest point, each panel twice as long as all before it.
  let n = 0;
  points[n++] = 0;
  const left: number = sNear;
  const right: number = L1 - sNear;
  if (left > 0) {
    let step = scale;
    const first = n;
    while (step < left && n < 70) {
      points[n++] = sNear - step;
      step *= 3;
    }
    points.subarray(first, n).reverse();
    points[n++] = sNear;
  }
  if (right > 0) {
    let step = scale;
    while (step < right && n < 150) {
      points[n++] = sNear + step;
      step *= 3;
    }
    points[n++] = L1;
  }

  let m00 = 0;
  let m10 = 0;
  let m01 = 0;
  let m11 = 0;
  for (let p = 0; p + 1 < n; p++) {
    const from = points[p]!;
    const width = points[p + 1]! - from;
    if (width <= 0) continue;
    for (let i = 0; i < node.length; i++) {
      const s = from + width * node[i]!;
      // Seen from the second segment's start: along it, and across it.
      const rx = s * sx - dx;
      const ry = s * sy - dy;
      const rz = s * sz - dz;
      const along = rx * tx + ry * ty + rz * tz;
      const qx = rx - along * tx;
      const qy = ry - along * ty;
      const qz = rz - along * tz;
      const rho2 = qx * qx + qy * qy + qz * qz + a2;
      const R1 = Math.sqrt(along * along + rho2);
      const w2 = L2 - along;
      const R2 = Math.sqrt(w2 * w2 + rho2);
      // ∫ ds'/R as a logarithm whose arguments never cancel.
      const log =
        along < 0
          ? Math.log((R2 + w2) / (R1 - along))
          : w2 < 0
            ? Math.log((R1 + along) / (R2 - w2))
            : Math.log(((R2 + w2) * (R1 + along)) / rho2);
      const first = (R2 - R1 + along * log) / L2;
      const w = width * weight[i]!;
      const u = s / L1;
      m00 += w * log;
      m10 += w * u * log;
      m01 += w * first;
      m11 += w * u * first;
    }
  }
  out[0] = m00;
  out[1] = m10;
  out[2] = m01;
  out[3] = m11;
  return out;
}
