import type { Complex } from "../contract.ts";

/**
 * Chain (ABCD) matrix of a two-port between the rig's side (1) and the antenna's (2), both currents towards the antenna:
 * V₁ = a V₂ + b I₂, I₁ = c V₂ + d I₂. `b` in ohm, `c` in siemens. Every part here is reciprocal: ad − bc = 1.
 */
export interface Chain {
  readonly a: Complex;
  readonly b: Complex;
  readonly c: Complex;
  readonly d: Complex;
}
