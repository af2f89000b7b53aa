import type { Placement } from "./Placement.ts";

/**
 * Spectra of the four kernels at one λ, with u = √(λ² − k²) (Re u ≥ 0), D = (u_a + u_b)(n u_a + u_b), n = ε_b/ε_a.
 *
 *   F1 = (λ/u_a)(u_a − u_b)/(u_a + u_b)            F2 = λ [2/(n u_a + u_b) − 1/u_a]
 *   F3 = −2(n − 1) λ²/D                            F4 = (λ/u_a)[(n u_a − u_b)/(n u_a + u_b) + 2(n − 1) u_a²/D]
 * and, across the surface, with X = e^{−(u_b − u_a) depth},
 *   F1 = 2λX/(u_a + u_b)                           F2 = 2λX/(n u_a + u_b),  F3 as above times X,  F4 = 0
 *
 * The differences of the roots are taken as (k_b² − k_a²)/(u_a + u_b): at large λ they cancel.
 *
 * @param otherSide  take the root of the soil with Re < 0
 * @param out 10 numbers, written: Re, Im of F1..F4 and of u_a
 */
export function spectrum(
  out: Float64Array,
  place: Placement,
  lamRe: number,
  lamIm: number,
  otherSide: boolean,
): Float64Array {
  const { aRe, aIm, bRe, bIm, nRe, nIm } = place;
  const l2Re = lamRe * lamRe - lamIm * lamIm;
  const l2Im = 2 * lamRe * lamIm;
  root(l2Re - aRe, l2Im - aIm);
  const flipA = otherSide && place.kind === "soil" ? -1 : 1;
  const uaRe = flipA * rootRe;
  const uaIm = flipA * rootIm;
  root(l2Re - bRe, l2Im - bIm);
  const flipB = otherSide && place.kind !== "soil" ? -1 : 1;
  const ubRe = flipB * rootRe;
  const ubIm = flipB * rootIm;
  // s = 1/(u_a + u_b), v = 1/(n u_a + u_b)
  const sumRe = uaRe + ubRe;
  const sumIm = uaIm + ubIm;
  let f = 1 / (sumRe * sumRe + sumIm * sumIm);
  const sRe = f * sumRe;
  const sIm = -f * sumIm;
  const nuRe = nRe * uaRe - nIm * uaIm;
  const nuIm = nRe * uaIm + nIm * uaRe;
  const denRe = nuRe + ubRe;
  const denIm = nuIm + ubIm;
  f = 1 / (denRe * denRe + denIm * denIm);
  const vRe = f * denRe;
  const vIm = -f * denIm;
  // g = 2(n − 1)/D
  const svRe = sRe * vRe - sIm * vIm;
  const svIm = sRe * vIm + sIm * vRe;
  const gRe = 2 * ((nRe - 1) * svRe - nIm * svIm);
  const gIm = 2 * ((nRe - 1) * svIm + nIm * svRe);
  const f3Re = -(gRe * l2Re - gIm * l2Im);
  const f3Im = -(gRe * l2Im + gIm * l2Re);
  out[8] = uaRe;
  out[9] = uaIm;

  if (place.kind === "across") {
    // −(u_b − u_a) d = (k_b² − k_a²) s d
    const d = place.depth_m;
    const eRe = d * ((bRe - aRe) * sRe - (bIm - aIm) * sIm);
    const eIm = d * ((bRe - aRe) * sIm + (bIm - aIm) * sRe);
    const size = Math.exp(eRe);
    const xRe = size * Math.cos(eIm);
    const xIm = size * Math.sin(eIm);
    const tRe = 2 * (lamRe * xRe - lamIm * xIm);
    const tIm = 2 * (lamRe * xIm + lamIm * xRe);
    out[0] = tRe * sRe - tIm * sIm;
    out[1] = tRe * sIm + tIm * sRe;
    out[2] = tRe * vRe - tIm * vIm;
    out[3] = tRe * vIm + tIm * vRe;
    out[4] = f3Re * xRe - f3Im * xIm;
    out[5] = f3Re * xIm + f3Im * xRe;
    out[6] = 0;
    out[7] = 0;
    return out;
  }
  // q = λ/u_a
  f = 1 / (uaRe * uaRe + uaIm * uaIm);
  const qRe = f * (lamRe * uaRe + lamIm * uaIm);
  const qIm = f * (lamIm * uaRe - lamRe * uaIm);
  // (u_a − u_b)/(u_a + u_b) = (k_b² − k_a²) s²
  const ssRe = sRe * sRe - sIm * sIm;
  const ssIm = 2 * sRe * sIm;
  const teRe = (bRe - aRe) * ssRe - (bIm - aIm) * ssIm;
  const teIm = (bRe - aRe) * ssIm + (bIm - aIm) * ssRe;
  out[0] = qRe * teRe - qIm * teIm;
  out[1] = qRe * teIm + qIm * teRe;
  out[2] = 2 * (lamRe * vRe - lamIm * vIm) - qRe;
  out[3] = 2 * (lamRe * vIm + lamIm * vRe) - qIm;
  out[4] = f3Re;
  out[5] = f3Im;
  // [(n u_a − u_b) v + g u_a²]
  const ua2Re = uaRe * uaRe - uaIm * uaIm;
  const ua2Im = 2 * uaRe * uaIm;
  const tmRe = nuRe - ubRe;
  const tmIm = nuIm - ubIm;
  const bracketRe = tmRe * vRe - tmIm * vIm + gRe * ua2Re - gIm * ua2Im;
  const bracketIm = tmRe * vIm + tmIm * vRe + gRe * ua2Im + gIm * ua2Re;
  out[6] = qRe * bracketRe - qIm * bracketIm;
  out[7] = qRe * bracketIm + qIm * bracketRe;
  return out;
}

let rootRe = 0;
let rootIm = 0;
/** Principal root into rootRe, rootIm, without loss near the negative axis. */
function root(re: number, im: number): void {
  const size = Math.sqrt(re * re + im * im);
  if (size === 0) {
    rootRe = 0;
    rootIm = 0;
  } else if (re >= 0) {
    rootRe = Math.sqrt(0.5 * (size + re));
    rootIm = im / (2 * rootRe);
  } else {
    const s = Math.sqrt(0.5 * (size - re));
    rootRe = Math.abs(im) / (2 * s);
    rootIm = im < 0 ? -s : s;
  }
}
