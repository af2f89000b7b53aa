import { C0_mPerS, EPS0_FPerM } from "../../constants.ts";

/** Air above z = 0, uniform soil below it, at one frequency. Time factor e^{+jωt}, so Im ε ≤ 0 and Im k1 ≤ 0. */
export interface HalfSpace {
  readonly frequency_Hz: number;
  readonly relativePermittivity: number;
  readonly conductivity_SPerM: number;
  /** Wavenumber in air [rad/m]. */
  readonly k0: number;
  /** Complex relative permittivity ε = εr − jσ/(ωε₀). */
  readonly epsRe: number;
  readonly epsIm: number;
  /** Wavenumber in soil k1 = k0 √ε [rad/m]. */
  readonly k1Re: number;
  readonly k1Im: number;
}

/**
 * @throws RangeError when frequency ≤ 0, εr < 1 or σ < 0 (plans are checked before they come here)
 */
export function halfSpaceOf(frequency_Hz: number, relativePermittivity: number, conductivity_SPerM: number): HalfSpace {
  if (!(frequency_Hz > 0 && relativePermittivity >= 1 && conductivity_SPerM >= 0))
    throw new RangeError(
      `halfSpaceOf: frequency ${frequency_Hz} Hz, permittivity ${relativePermittivity}, conductivity ${conductivity_SPerM} S/m`,
    );
  const omega = 2 * Math.PI * frequency_Hz;
  const k0 = omega / C0_mPerS;
  const epsRe = relativePermittivity;
  const epsIm = conductivity_SPerM === 0 ? 0 : -conductivity_SPerM / (omega * EPS0_FPerM);
  const n = Math.sqrt(0.5 * (Math.sqrt(epsRe * epsRe + epsIm * epsIm) + epsRe));
  return {
    frequency_Hz,
    relativePermittivity,
    conductivity_SPerM,
    k0,
    epsRe,
    epsIm,
    k1Re: k0 * n,
    k1Im: (k0 * epsIm) / (2 * n),
  };
}
