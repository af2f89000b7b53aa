import type { Placement } from "./Placement.ts";

/**
 * What is taken out of the four kernels in closed form, because it grows as 1/R:
 *
 *   I_k = S_k + A_k g,   g = e^{−jkR}/R (k of medium a; across the surface k0),   A_3 carries the factor ρ/(R + ζ)
 *
 *   same medium:  A1 = 0,  A2 = −c,         A3 = −c,  A4 = 2c          c = (n − 1)/(n + 1)
 *   across:       A1 = 1,  A2 = 2/(n + 1),  A3 = −c,  A4 = 0
 *
 * ρ/(R + ζ) = (1 − ζ/R) R/ρ, written so that it does not cancel on the axis. The remainders S stay finite at R = 0.
 *
 * @returns 8 numbers: Re, Im of A1..A4
 */
export function staticPart(place: Placement): Float64Array {
  const { cRe, cIm } = place;
  // 2/(n + 1) = 1 − c
  return place.kind === "across"
    ? Float64Array.of(1, 0, 1 - cRe, -cIm, -cRe, -cIm, 0, 0)
    : Float64Array.of(0, 0, -cRe, -cIm, -cRe, -cIm, 2 * cRe, 2 * cIm);
}
