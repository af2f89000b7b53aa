import { sinkRate } from "./sinkRate.ts";

const w = new Float64Array(2);

/**
 * Plane-wave reflection coefficients of the ground at an elevation, for the field transverse-magnetic (vertical
 * polarisation) and transverse-electric (horizontal):
 *
 *   Γ_v = (ε sin α − w)/(ε sin α + w),  Γ_h = (sin α − w)/(sin α + w),  w = √(ε − cos² α), Re w ≥ 0
 *
 * @param out          4 numbers, written: Re Γ_v, Im Γ_v, Re Γ_h, Im Γ_h
 * @param epsRe, epsIm complex relative permittivity εᵣ − jσ/(ωε₀) (epsIm ≤ 0); epsRe = Infinity for a perfect ground
 */
export function reflection(out: Float64Array, epsRe: number, epsIm: number, elevation_rad: number): Float64Array {
  if (epsRe === Number.POSITIVE_INFINITY) {
    out[0] = 1;
    out[1] = 0;
    out[2] = -1;
    out[3] = 0;
    return out;
  }
  const s = Math.sin(elevation_rad);
  sinkRate(w, epsRe, epsIm, elevation_rad);
  const wr = w[0]!;
  const wi = w[1]!;
  const divide = (at: number, nr: number, ni: number, dr: number, di: number) => {
    const d = dr * dr + di * di;
    out[at] = (nr * dr + ni * di) / d;
    out[at + 1] = (ni * dr - nr * di) / d;
  };
  divide(0, epsRe * s - wr, epsIm * s - wi, epsRe * s + wr, epsIm * s + wi);
  divide(2, s - wr, -wi, s + wr, wi);
  return out;
}
