import { pairMoments } from "../pairMoments.ts";
import type { HalfSpace } from "./HalfSpace.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import { placeAcross } from "./Placement.ts";
import type { Remainders } from "./Remainders.ts";
import { readPatchKernels } from "./readPatchKernels.ts";
import { staticPart } from "./staticPart.ts";

/** Depths closer than this count as one [m]. */
const SAME_DEPTH_M = 1e-9;

/**
 * The whole kernels between a segment in air and one in soil, which the surface lets through.
 *
 * Kernels are kept for single depths. A point at one of them is read there; between them S_k e^{+jk0 R} at fixed ρ and ζ
 * is taken by the polynomial through `grid`: its dependence on depth is e^{−(u1 − u0) d}, as smooth as |k1| d is small.
 *
 * @param known patches by depth, from `depthGrid` and of level wires
 * @param grid  depths of the polynomial, ascending; may be empty where all wires in soil are level
 */
export function remaindersAcross(
  h: HalfSpace,
  known: ReadonlyMap<number, KernelPatches>,
  grid: readonly number[],
): Remainders {
  const part = new Float64Array(10);
  const depths = [...known.keys()];
  const gridPatches = grid.map((d) => known.get(d)!);
  return {
    mirrored: false,
    staticPart: staticPart(placeAcross(h, 0)),
    k1: Math.sqrt(h.k1Re * h.k1Re + h.k1Im * h.k1Im),
    k: h.k0,
    read(out, rho, zeta, depth) {
      for (const d of depths)
        if (Math.abs(d - depth) <= SAME_DEPTH_M) {
          readPatchKernels(out, known.get(d)!, rho, zeta);
          return;
        }
      out.fill(0, 0, 8);
      for (let i = 0; i < grid.length; i++) {
        let w = 1;
        for (let j = 0; j < grid.length; j++) if (j !== i) w *= (depth - grid[j]!) / (grid[i]! - grid[j]!);
        readPatchKernels(part, gridPatches[i]!, rho, zeta);
        for (let c = 0; c < 8; c++) out[c]! += w * part[c]!;
      }
      out[8] = part[8]!;
      out[9] = part[9]!;
    },
    levelLine: () => null,
    moments(out, segments, s, t) {
      pairMoments(out, segments, s, t, false, h.k0);
    },
  };
}
