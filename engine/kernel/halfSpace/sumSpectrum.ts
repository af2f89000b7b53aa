import { besselJ01 } from "../../special/besselJ01.ts";
import { hankelFirst01 } from "../../special/hankelFirst01.ts";
import { hankelSecond01 } from "../../special/hankelSecond01.ts";
import type { Placement } from "./Placement.ts";
import { FIRST, type SpectralPath, STANDING } from "./spectralPath.ts";
import { spectrum } from "./spectrum.ts";

const F = new Float64Array(10);
const C = new Float64Array(4);

/**
 * Integrates the four kernels along a path at all points of a grid of p distances and q height sums:
 *
 *   out[8(i q + j) …] = Σ_n w_n F_k(λ_n) C_ν(λ_n ρ_i) e^{−u_a(λ_n) ζ_j},   k = 1..4 (C = J or a Hankel half, ν = 1 for k = 3)
 *
 * The functions of ρ and of ζ are taken once per node, so that a grid costs p Bessel functions, q exponentials and
 * p q products per node.
 *
 * @param out 8 p q numbers, written: Re, Im of I1..I4 [1/m]
 */
export function sumSpectrum(
  out: Float64Array,
  place: Placement,
  path: SpectralPath,
  rho: Float64Array,
  zeta: Float64Array,
): Float64Array {
  const p = rho.length;
  const q = zeta.length;
  out.fill(0, 0, 8 * p * q);
  const decay = new Float64Array(2 * q);
  const { data, kind, otherSide } = path;
  for (let n = 0; n < path.count; n++) {
    const lamRe = data[4 * n]!;
    const lamIm = data[4 * n + 1]!;
    const wRe = data[4 * n + 2]!;
    const wIm = data[4 * n + 3]!;
    spectrum(F, place, lamRe, lamIm, otherSide[n] === 1);
    const a0 = F[0]! * wRe - F[1]! * wIm;
    const a1 = F[0]! * wIm + F[1]! * wRe;
    const a2 = F[2]! * wRe - F[3]! * wIm;
    const a3 = F[2]! * wIm + F[3]! * wRe;
    const a4 = F[4]! * wRe - F[5]! * wIm;
    const a5 = F[4]! * wIm + F[5]! * wRe;
    const a6 = F[6]! * wRe - F[7]! * wIm;
    const a7 = F[6]! * wIm + F[7]! * wRe;
    const uRe = F[8]!;
    const uIm = F[9]!;
    for (let j = 0; j < q; j++) {
      const size = Math.exp(-uRe * zeta[j]!);
      const phase = uIm * zeta[j]!;
      decay[2 * j] = size * Math.cos(phase);
      decay[2 * j + 1] = -size * Math.sin(phase);
    }
    const which = kind[n]!;
    const bessel = which === STANDING ? besselJ01 : which === FIRST ? hankelFirst01 : hankelSecond01;
    for (let i = 0; i < p; i++) {
      bessel(C, lamRe * rho[i]!, lamIm * rho[i]!);
      const c0 = C[0]!;
      const c1 = C[1]!;
      const d0 = C[2]!;
      const d1 = C[3]!;
      const b0 = a0 * c0 - a1 * c1;
      const b1 = a0 * c1 + a1 * c0;
      const b2 = a2 * c0 - a3 * c1;
      const b3 = a2 * c1 + a3 * c0;
      const b4 = a4 * d0 - a5 * d1;
      const b5 = a4 * d1 + a5 * d0;
      const b6 = a6 * c0 - a7 * c1;
      const b7 = a6 * c1 + a7 * c0;
      let at = 8 * i * q;
      for (let j = 0; j < q; j++) {
        const er = decay[2 * j]!;
        const ei = decay[2 * j + 1]!;
        out[at]! += b0 * er - b1 * ei;
        out[at + 1]! += b0 * ei + b1 * er;
        out[at + 2]! += b2 * er - b3 * ei;
        out[at + 3]! += b2 * ei + b3 * er;
        out[at + 4]! += b4 * er - b5 * ei;
        out[at + 5]! += b4 * ei + b5 * er;
        out[at + 6]! += b6 * er - b7 * ei;
        out[at + 7]! += b6 * ei + b7 * er;
        at += 8;
      }
    }
  }
  return out;
}
