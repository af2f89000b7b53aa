import { wavelength_m } from "../units.ts";

/**
 * Estimate of the height at which a single upright of even thickness over perfect ground is resonant (X = 0, near a
 * quarter wavelength):
 *
 *   h = λ/4 · (1 − 1/(4.543 ln(λ/d) − 8.62))
 *
 * A fit to nine converged thin-wire solutions (height/diameter 50 to 20 000; the table stands in the tests): off by
 * 0.11 % at height/diameter 50, 0.03 % or less from 100 up. Soil and radials shift a real element by more than that;
 * it is a starting length.
 */
export function resonantHeight_m(frequency_MHz: number, diameter_mm: number): number {
  const wavelength = wavelength_m(frequency_MHz);
  return 0.25 * wavelength * (1 - 1 / (4.543 * Math.log((wavelength * 1000) / diameter_mm) - 8.62));
}
