import { gaussLegendre } from "../../engine/quad/gaussLegendre.ts";
import type { Ends } from "./pairByCutting.ts";

type Point = readonly [number, number, number];

/** Writes Re V, Im V, Re K, Im K of two unit current elements at p (direction a) and at q (direction b). */
export type Density = (out: Float64Array, p: Point, q: Point, a: Point, b: Point) => void;

/**
 * The moments of two segments by brute force, of any kernel: rectangles of (u, u') are cut in four until each is small
 * against the distance that counts, or as small as `least_m`, with an n × n rule on each.
 *
 * @param first,second  ends of the two
 * @param density       the kernel, whole or a part of it
 * @param distance      what a piece has to be small against
 * @returns as a PairKernel writes: 4 real parts, 4 imaginary parts of V, Re S, Im S
 */
export function momentsByCutting(
  first: Ends,
  second: Ends,
  density: Density,
  distance: (p: Point, q: Point) => number,
  { small = 0.7, least_m = 0, points = 7 }: { small?: number; least_m?: number; points?: number } = {},
): number[] {
  const { node, weight } = gaussLegendre(points);
  const out = new Array<number>(10).fill(0);
  const here = new Float64Array(4);
  const along = (e: Ends) => [0, 1, 2].map((c) => e[1][c]! - e[0][c]!) as [number, number, number];
  const at = (e: Ends, d: Point, u: number): Point => [e[0][0] + u * d[0], e[0][1] + u * d[1], e[0][2] + u * d[2]];
  const d1 = along(first);
  const d2 = along(second);
  const L1 = Math.hypot(...d1);
  const L2 = Math.hypot(...d2);
  const a = d1.map((x) => x / L1) as unknown as Point;
  const b = d2.map((x) => x / L2) as unknown as Point;
  const nearest = (u0: number, u1: number, v0: number, v1: number) => {
    let least = Infinity;
    for (const u of [u0, 0.5 * (u0 + u1), u1])
      for (const v of [v0, 0.5 * (v0 + v1), v1]) least = Math.min(least, distance(at(first, d1, u), at(second, d2, v)));
    return least;
  };
  const piece = (u0: number, u1: number, v0: number, v1: number): void => {
    const size = Math.max((u1 - u0) * L1, (v1 - v0) * L2);
    if (size > least_m && size > small * nearest(u0, u1, v0, v1)) {
      const um = 0.5 * (u0 + u1);
      const vm = 0.5 * (v0 + v1);
      // Whichever is longer, or both where they are alike.
      const [long1, long2] = [(u1 - u0) * L1 > 0.7 * size, (v1 - v0) * L2 > 0.7 * size];
      for (const [p, q] of long1 ? [[u0, um] as const, [um, u1] as const] : [[u0, u1] as const])
        for (const [r, s] of long2 ? [[v0, vm] as const, [vm, v1] as const] : [[v0, v1] as const]) piece(p, q, r, s);
      return;
    }
    for (let i = 0; i < points; i++)
      for (let j = 0; j < points; j++) {
        const u = u0 + (u1 - u0) * node[i]!;
        const v = v0 + (v1 - v0) * node[j]!;
        density(here, at(first, d1, u), at(second, d2, v), a, b);
        const w = weight[i]! * weight[j]! * (u1 - u0) * (v1 - v0) * L1 * L2;
        for (const part of [0, 1]) {
          const V = w * here[part]!;
          out[4 * part]! += V;
          out[4 * part + 1]! += u * V;
          out[4 * part + 2]! += v * V;
          out[4 * part + 3]! += u * v * V;
          out[8 + part]! += w * here[2 + part]!;
        }
      }
  };
  piece(0, 1, 0, 1);
  return out;
}
