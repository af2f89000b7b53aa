import type { KernelPatches } from "../../engine/kernel/halfSpace/KernelPatches.ts";
import { readPatchKernels } from "../../engine/kernel/halfSpace/readPatchKernels.ts";
import { staticPart } from "../../engine/kernel/halfSpace/staticPart.ts";
import { gaussLegendre } from "../../engine/quad/gaussLegendre.ts";

export type Ends = readonly [readonly [number, number, number], readonly [number, number, number]];

/**
 * The reflected moments of two segments in air by brute force: the whole kernels I1..I4 at every point (nothing taken
 * out in closed form), on rectangles of (u, u') that are cut in four until each is small against its distance from the
 * image, with a 7 × 7 rule on each.
 *
 * @param patches  the kernels, to an error far below what is to be checked
 * @param small    size of a piece against its distance
 * @returns as a PairKernel writes: 4 real parts, 4 imaginary parts of V, Re S, Im S
 */
export function pairByCutting(patches: KernelPatches, first: Ends, second: Ends, small = 0.7): number[] {
  const A = staticPart(patches.place);
  const { node, weight } = gaussLegendre(7);
  const I = new Float64Array(10);
  const out = new Array<number>(10).fill(0);
  const vector = (e: Ends) => [0, 1, 2].map((c) => e[1][c]! - e[0][c]!) as [number, number, number];
  const a = vector(first);
  const b = vector(second);
  const La = Math.hypot(...a);
  const Lb = Math.hypot(...b);
  const at = (u: number, v: number) => ({
    x: first[0][0] + u * a[0] - second[0][0] - v * b[0],
    y: first[0][1] + u * a[1] - second[0][1] - v * b[1],
    zeta: first[0][2] + u * a[2] + second[0][2] + v * b[2],
  });
  const nearest = (u0: number, u1: number, v0: number, v1: number) => {
    let least = Infinity;
    for (const u of [u0, 0.5 * (u0 + u1), u1])
      for (const v of [v0, 0.5 * (v0 + v1), v1]) {
        const p = at(u, v);
        least = Math.min(least, Math.hypot(p.x, p.y, p.zeta));
      }
    return least;
  };
  const piece = (u0: number, u1: number, v0: number, v1: number, depth: number): void => {
    const size = Math.max((u1 - u0) * La, (v1 - v0) * Lb);
    if (size > small * nearest(u0, u1, v0, v1) && depth < 14) {
      const um = 0.5 * (u0 + u1);
      const vm = 0.5 * (v0 + v1);
      piece(u0, um, v0, vm, depth + 1);
      piece(um, u1, v0, vm, depth + 1);
      piece(u0, um, vm, v1, depth + 1);
      piece(um, u1, vm, v1, depth + 1);
      return;
    }
    for (let i = 0; i < node.length; i++) {
      for (let j = 0; j < node.length; j++) {
        const u = u0 + (u1 - u0) * node[i]!;
        const v = v0 + (v1 - v0) * node[j]!;
        const p = at(u, v);
        const rho = Math.hypot(p.x, p.y);
        const R = Math.hypot(rho, p.zeta);
        readPatchKernels(I, patches, rho, p.zeta);
        for (let k = 0; k < 4; k++) {
          const f = k === 2 ? rho / (R + p.zeta) : 1;
          I[2 * k]! += f * (A[2 * k]! * I[8]! - A[2 * k + 1]! * I[9]!);
          I[2 * k + 1]! += f * (A[2 * k]! * I[9]! + A[2 * k + 1]! * I[8]!);
        }
        const cos = rho > 0 ? p.x / rho : 0;
        const sin = rho > 0 ? p.y / rho : 0;
        const w = weight[i]! * weight[j]! * (u1 - u0) * (v1 - v0);
        for (const part of [0, 1]) {
          const [xx, k, zx, zz] = [I[part]!, I[2 + part]!, I[4 + part]!, I[6 + part]!];
          // a·G·b with G_xz = −G_zx; the lengths of a and b are in the vectors.
          const v00 =
            xx * (a[0] * b[0] + a[1] * b[1]) +
            zz * a[2] * b[2] +
            zx * (a[2] * (cos * b[0] + sin * b[1]) - b[2] * (cos * a[0] + sin * a[1]));
          const to = 4 * part;
          out[to]! += w * v00;
          out[to + 1]! += w * u * v00;
          out[to + 2]! += w * v * v00;
          out[to + 3]! += w * u * v * v00;
          out[8 + part]! += w * k * La * Lb;
        }
      }
    }
  };
  piece(0, 1, 0, 1, 0);
  return out;
}
