import type { Complex, RadialScreen } from "../contract.ts";
import type { Centre } from "./gatherCentres.ts";

/** Distances from a centre at which the integrand changes its manner; infinite where that does not come up. */
export interface RadialScales {
  /** The radials' reactance has grown to the size of the soil's impedance: inside Z_s rises like ρ, outside it is level. */
  readonly knee: number;
  /** Outside, the phase e^{−2jkρ} shapes the integrand; inside (and outside the knee) the logarithm of the distance. */
  readonly wave: number;
}

/** Finds the scales of one centre from the soil's admittance and the radials that meet there. */
export function radialScales(
  centre: Centre,
  screens: readonly RadialScreen[],
  soil: Complex,
  omegaMu: number,
  k: number,
): RadialScales {
  const wave = 0.4 / k;
  if (centre.bare) return { knee: Number.POSITIVE_INFINITY, wave };
  let knee = Number.POSITIVE_INFINITY;
  for (const s of screens) {
    if (!(s.count > 0) || Math.abs(s.x_m - centre.x_m) > 1e-6 || Math.abs(s.y_m - centre.y_m) > 1e-6) continue;
    // w ln w = |Z| N / (ωμ₀ b) with w = ρ/b, b = N a: a few rounds are near enough for a cut.
    const b = s.count * s.radius_m;
    const target = s.count / (Math.sqrt(soil.re ** 2 + soil.im ** 2) * omegaMu * b);
    let w = Math.max(Math.E, target);
    for (let round = 0; round < 4; round++) w = Math.max(Math.E, target / Math.log(w));
    knee = Math.min(knee, b * w);
  }
  if (knee > 0.3 * wave) return { knee: Number.POSITIVE_INFINITY, wave: Number.POSITIVE_INFINITY };
  return { knee, wave };
}
