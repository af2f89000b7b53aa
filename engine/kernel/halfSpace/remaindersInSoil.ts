import { lossyMoments } from "../lossyMoments.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import { levelLine } from "./levelLine.ts";
import type { Remainders } from "./Remainders.ts";
import { readPatchKernels } from "./readPatchKernels.ts";
import { staticPart } from "./staticPart.ts";

/** What the surface reflects between two segments in soil, z counted downwards. */
export function remaindersInSoil(patches: KernelPatches): Remainders {
  const { k1Re, k1Im } = patches.place.halfSpace;
  const k1 = Math.sqrt(k1Re * k1Re + k1Im * k1Im);
  return {
    mirrored: true,
    staticPart: staticPart(patches.place),
    k1,
    k: k1,
    read(out, rho, zeta) {
      readPatchKernels(out, patches, rho, zeta);
    },
    levelLine: (zeta) => levelLine(patches, zeta),
    moments(out, segments, s, t) {
      lossyMoments(out, segments, s, t, true, k1Re, k1Im);
    },
  };
}
