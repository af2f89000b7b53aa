import { expTable } from "../../special/expTable.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import { readPatches } from "./readPatches.ts";

const phase = new Float64Array(2);

/**
 * The same ten numbers as `readTable`, straight from the series: half a microsecond, for what is asked rarely (both
 * points in soil). g is that of the placement's own medium, e^{−jk1 R}/R in soil.
 *
 * @param out  10 numbers, written: Re, Im of S1..S4, then of g [1/m]
 * Accuracy: `patches.error`/R.
 */
export function readPatchKernels(out: Float64Array, patches: KernelPatches, rho: number, zeta: number): Float64Array {
  const { kRe, kIm, halfSpace } = patches.place;
  const R = Math.sqrt(rho * rho + zeta * zeta);
  readPatches(out, patches, rho, zeta);
  expTable(phase, 0, halfSpace.k0 * R);
  const er = phase[0]!;
  const ei = -phase[1]!;
  for (let c = 0; c < 8; c += 2) {
    const re = out[c]!;
    const im = out[c + 1]!;
    out[c] = re * er - im * ei;
    out[c + 1] = re * ei + im * er;
  }
  expTable(phase, 0, kRe * R);
  const size = (kIm === 0 ? 1 : Math.exp(kIm * R)) / R;
  out[8] = size * phase[0]!;
  out[9] = -size * phase[1]!;
  return out;
}
