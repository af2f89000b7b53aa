import type { Complex, ElementPlan } from "../../contract.ts";
import { swr } from "../../readouts/swr.ts";
import { baseCurrents } from "../trial/baseCurrents.ts";
import type { SampleNumbers } from "../trial/SampleNumbers.ts";

/** Directions of a search: ahead, straight back, and the rear sector in steps of some 10 degrees. */
export function coarseAzimuths(rearSector_deg: number): readonly number[] {
  const steps = Math.max(1, Math.ceil(rearSector_deg / 20));
  const behind = Array.from({ length: 2 * steps + 1 }, (_, j) => 180 + ((j - steps) / steps) * (rearSector_deg / 2));
  return [...new Set([0, 180, ...behind])];
}

/** Power gain [1] of some elements in each direction their fields are known in, at the first elevation, and the first feed. */
export function gainsOf(
  elements: readonly Pick<ElementPlan, "base">[],
  { impedance_ohm: z, fields }: SampleNumbers,
): { readonly gains: Float64Array; readonly impedance_ohm: Complex } {
  const P = elements.length;
  const amperes = baseCurrents(elements, z);
  let power = 0;
  let first: Complex | undefined;
  for (let i = 0; i < P; i++) {
    if (elements[i]!.base.kind !== "fed") continue;
    let vRe = 0;
    let vIm = 0;
    for (let j = 0; j < P; j++) {
      const [zr, zi] = [z[2 * (i * P + j)]!, z[2 * (i * P + j) + 1]!];
      vRe += zr * amperes[2 * j]! - zi * amperes[2 * j + 1]!;
      vIm += zr * amperes[2 * j + 1]! + zi * amperes[2 * j]!;
    }
    const [iRe, iIm] = [amperes[2 * i]!, amperes[2 * i + 1]!];
    const size = iRe * iRe + iIm * iIm;
    power += vRe * iRe + vIm * iIm;
    first ??= { re: (vRe * iRe + vIm * iIm) / size, im: (vIm * iRe - vRe * iIm) / size };
  }
  const perPort = fields.length / P;
  const gains = new Float64Array(perPort / 4);
  for (let d = 0; d < perPort; d += 4) {
    let size = 0;
    for (let c = d; c < d + 4; c += 2) {
      let re = 0;
      let im = 0;
      for (let p = 0; p < P; p++) {
        const at = p * perPort + c;
        re += amperes[2 * p]! * fields[at]! - amperes[2 * p + 1]! * fields[at + 1]!;
        im += amperes[2 * p]! * fields[at + 1]! + amperes[2 * p + 1]! * fields[at]!;
      }
      size += re * re + im * im;
    }
    gains[d / 4] = size / power;
  }
  return { gains, impedance_ohm: first! };
}

/** Worst SWR (50 ohm) of some feeds. */
export function worstSwr(impedances: readonly Complex[]): number {
  return Math.max(...impedances.map(({ re, im }) => swr(re, im, 50)));
}
