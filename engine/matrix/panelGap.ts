import type { Segments } from "../wires/Segments.ts";
import type { Panel } from "./wirePanels.ts";

/** Shortest distance between two panels of the wires that begin with segments s and t [m]. */
export function panelGap({ start, tangent }: Segments, s: number, one: Panel, t: number, other: Panel): number {
  const sx = tangent[3 * s]!;
  const sy = tangent[3 * s + 1]!;
  const sz = tangent[3 * s + 2]!;
  const tx = tangent[3 * t]!;
  const ty = tangent[3 * t + 1]!;
  const tz = tangent[3 * t + 2]!;
  // Start of the other seen from the start of the one.
  const dx = start[3 * t]! - start[3 * s]! + other.from_m * tx - one.from_m * sx;
  const dy = start[3 * t + 1]! - start[3 * s + 1]! + other.from_m * ty - one.from_m * sy;
  const dz = start[3 * t + 2]! - start[3 * s + 2]! + other.from_m * tz - one.from_m * sz;
  const b = sx * tx + sy * ty + sz * tz;
  const ds = dx * sx + dy * sy + dz * sz;
  const dt = dx * tx + dy * ty + dz * tz;
  const clamp = (x: number, top: number) => Math.max(0, Math.min(x, top));
  // Of parallel ones any point will do to begin with: what follows finds the nearest.
  const det = 1 - b * b;
  let u = det > 1e-14 ? clamp((ds - b * dt) / det, one.length_m) : 0;
  let v = clamp(b * u - dt, other.length_m);
  u = clamp(ds + b * v, one.length_m);
  v = clamp(b * u - dt, other.length_m);
  const x = dx + v * tx - u * sx;
  const y = dy + v * ty - u * sy;
  const z = dz + v * tz - u * sz;
  return Math.sqrt(x * x + y * y + z * z);
}
