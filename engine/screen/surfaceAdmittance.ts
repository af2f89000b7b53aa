import { EPS0_FPerM, ETA0_ohm } from "../constants.ts";
import type { Complex, RadialScreen } from "../contract.ts";

/**
 * Surface admittance of bare soil, the inverse of η₀/√ε_c, with ε_c = ε_r − jσ/(ωε₀) [S].
 *
 * The impedance of a plane wave that enters straight down. For a wave along the surface it is short of the exact value
 * by about 1/(2 ε_c) of itself.
 */
export function soilAdmittance(
  omega_radPerS: number,
  ground: { readonly relativePermittivity: number; readonly conductivity_SPerM: number },
): Complex {
  const re = ground.relativePermittivity;
  const im = -ground.conductivity_SPerM / (omega_radPerS * EPS0_FPerM);
  // √ with the real part positive and the imaginary part negative, without cancellation for small losses.
  const size = Math.sqrt(re * re + im * im);
  const root = Math.sqrt(0.5 * (size + re));
  return { re: root / ETA0_ohm, im: im / (2 * root * ETA0_ohm) };
}

/**
 * Radius within which radials count as a perfect sheet: there their spacing s = 2πρ/N is below 2πa, the reactance of
 * the sheet has come down to zero, and ρ < N a [m].
 */
export function perfectRadius_m(screen: RadialScreen): number {
  return screen.count * screen.radius_m;
}

/**
 * Reactance of the sheet of radials at distance ρ from their hub: ωμ₀ (s/2π) ln(s/2πa) with the spacing s = 2πρ/N,
 * that is (ωμ₀ρ/N) ln(ρ/(N a)) [ohm]. It acts in parallel with the soil.
 *
 * Source: the classical reactance of a grid of parallel wires, as used for radials by G. H. Monteath (1951) and
 *   J. R. Wait and W. A. Pope (1954, 1955); cited from memory.
 */
export function sheetReactance(omegaMu: number, count: number, radius_m: number, rho_m: number): number {
  return ((omegaMu * rho_m) / count) * Math.log(rho_m / (count * radius_m));
}
