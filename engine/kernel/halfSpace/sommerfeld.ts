import type { HalfSpace } from "./HalfSpace.ts";
import { type Placement, placeAcross, placeInAir, placeInSoil } from "./Placement.ts";
import { spectralPath } from "./spectralPath.ts";
import { sumSpectrum } from "./sumSpectrum.ts";

const FINE = 18;
const COARSE = 12;

/**
 * The Sommerfeld integrals of one pair of points, straight from their spectra, with an error estimate.
 *
 * Both points in air (`reflected`), ρ the horizontal distance, ζ = z + z':
 *   G_xx = G_yy = I1/4π,  K = I2/4π,  G_zx = cos φ I3/4π = −G_xz (sin φ for y; φ from source to observer),  G_zz = I4/4π
 * are what the soil adds to e^{−jk0 R}/(4πR). Both points in soil (`reflectedInSoil`), ζ the sum of the depths: the same
 * with the media exchanged, and K = I2/(4πε), added to e^{−jk1 R}/(4πR) (K: /ε); z then counts downwards in G_zx.
 * One above, one below (`transmitted`): G_xx = G_yy = G_zz = T1/4π, K = T2/4π, G_zx = cos φ T3/4π = −G_xz in all.
 * The spectra stand in `spectrum.ts`, the path in `spectralPath.ts`.
 *
 * @param out   9 numbers, written: Re, Im of I1..I4 (T1..T3, 0), then the largest difference between an 18-point and a
 *              12-point rule on the same panels, all in 1/m. That difference bounds the error of the 12-point result, so
 *              the value is better than it says.
 * Accuracy: 1e-12/R or better over 1.8..30 MHz and soils from dry sand to sea water, R from 5 mm to 3 wavelengths.
 * Source: the four kernels are the classical Sommerfeld potentials with the horizontal current's scalar potential made
 *   continuous (mixed-potential "formulation C" of Michalski and Zheng, IEEE Trans. Antennas Propag. 38 (1990) 335; from
 *   memory).
 * @throws RangeError when ρ < 0, ζ < 0 or both are 0
 */
export function reflected(out: Float64Array, h: HalfSpace, rho: number, zeta: number): Float64Array {
  return integrate(out, placeInAir(h), rho, zeta, "reflected");
}

/** See `reflected`. @param zeta sum of the two depths [m] */
export function reflectedInSoil(out: Float64Array, h: HalfSpace, rho: number, zeta: number): Float64Array {
  return integrate(out, placeInSoil(h), rho, zeta, "reflectedInSoil");
}

/** See `reflected`. @param height of the point in air [m] @param depth of the point in soil [m] */
export function transmitted(out: Float64Array, h: HalfSpace, rho: number, height: number, depth: number): Float64Array {
  return integrate(out, placeAcross(h, depth), rho, height + depth, "transmitted");
}

const rough = new Float64Array(8);
const oneRho = new Float64Array(1);
const oneZeta = new Float64Array(1);

function integrate(out: Float64Array, place: Placement, rho: number, zeta: number, who: string): Float64Array {
  if (!(rho >= 0 && zeta >= 0 && rho + zeta > 0)) throw new RangeError(`${who}: rho ${rho} m, zeta ${zeta} m`);
  oneRho[0] = rho;
  oneZeta[0] = zeta;
  const patch = { rho0: rho, rho1: rho, zeta0: zeta, zeta1: zeta };
  sumSpectrum(rough, place, spectralPath(place, patch, COARSE), oneRho, oneZeta);
  sumSpectrum(out, place, spectralPath(place, patch, FINE), oneRho, oneZeta);
  let error = 0;
  for (let i = 0; i < 8; i += 2) {
    const re = out[i]! - rough[i]!;
    const im = out[i + 1]! - rough[i + 1]!;
    error = Math.max(error, Math.sqrt(re * re + im * im));
  }
  out[8] = error;
  return out;
}
