type Point = readonly [number, number, number];

const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

/** Shortest distance between two straight pieces p0–p1 and q0–q1, in the unit of the points. */
export function segmentDistance(p0: Point, p1: Point, q0: Point, q1: Point): number {
  const u = minus(p1, p0);
  const v = minus(q1, q0);
  const w = minus(p0, q0);
  const a = dot(u, u);
  const b = dot(u, v);
  const c = dot(v, v);
  const d = dot(u, w);
  const e = dot(v, w);
  const clamp = (x: number) => (x < 0 ? 0 : x > 1 ? 1 : x);
  const det = a * c - b * b;
  // Parallel lines: any point of the first will do as a start, the clamping below finds the rest.
  let s = det > 1e-14 * a * c ? clamp((b * e - c * d) / det) : 0;
  const t = clamp((b * s + e) / c);
  s = clamp((b * t - d) / a);
  const t2 = clamp((b * s + e) / c);
  const gap = (i: 0 | 1 | 2) => w[i] + s * u[i] - t2 * v[i];
  return Math.sqrt(gap(0) ** 2 + gap(1) ** 2 + gap(2) ** 2);
}
