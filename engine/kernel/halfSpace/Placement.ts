import type { HalfSpace } from "./HalfSpace.ts";

/**
 * Where source and observer are, in the terms the spectral integrals need. "a" is the medium whose decay e^{−u_a ζ}
 * carries the distance ζ, "b" the other one.
 *   air     both above the surface:  a = air, b = soil, ζ = z + z'
 *   soil    both below it:           a = soil, b = air, ζ = sum of the depths
 *   across  one above, one `depth_m` below: a = air, b = soil, ζ = height + depth (the rest of the decay through the
 *           soil, e^{−(u_b − u_a) depth}, is a factor of the spectrum)
 */
export interface Placement {
  readonly kind: "air" | "soil" | "across";
  /** For "across"; 0 otherwise [m]. */
  readonly depth_m: number;
  readonly halfSpace: HalfSpace;
  /** k² of the two media, complex [rad²/m²]. */
  readonly aRe: number;
  readonly aIm: number;
  readonly bRe: number;
  readonly bIm: number;
  /** ε_b/ε_a. */
  readonly nRe: number;
  readonly nIm: number;
  /** Wavenumber of medium a: k0 or k1. */
  readonly kRe: number;
  readonly kIm: number;
  /** c = (n − 1)/(n + 1), the electrostatic image of a charge. */
  readonly cRe: number;
  readonly cIm: number;
}

export function placeInAir(h: HalfSpace): Placement {
  return place("air", 0, h);
}
export function placeInSoil(h: HalfSpace): Placement {
  return place("soil", 0, h);
}
export function placeAcross(h: HalfSpace, depth_m: number): Placement {
  return place("across", depth_m, h);
}

function place(kind: Placement["kind"], depth_m: number, halfSpace: HalfSpace): Placement {
  const { k0, epsRe, epsIm, k1Re, k1Im } = halfSpace;
  const airRe = k0 * k0;
  const soilRe = airRe * epsRe;
  const soilIm = airRe * epsIm;
  const size = epsRe * epsRe + epsIm * epsIm;
  const inSoil = kind === "soil";
  const nRe = inSoil ? epsRe / size : epsRe;
  const nIm = inSoil ? -epsIm / size : epsIm;
  const d = (nRe + 1) * (nRe + 1) + nIm * nIm;
  return {
    kind,
    depth_m,
    halfSpace,
    aRe: inSoil ? soilRe : airRe,
    aIm: inSoil ? soilIm : 0,
    bRe: inSoil ? airRe : soilRe,
    bIm: inSoil ? 0 : soilIm,
    nRe,
    nIm,
    kRe: inSoil ? k1Re : k0,
    kIm: inSoil ? k1Im : 0,
    cRe: (nRe * nRe - 1 + nIm * nIm) / d,
    cIm: (2 * nIm) / d,
  };
}
