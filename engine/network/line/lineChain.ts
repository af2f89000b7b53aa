import type { Chain } from "../Chain.ts";
import { cx } from "../cx.ts";
import type { Line } from "./Line.ts";
import { propagation } from "./propagation.ts";

/**
 * Chain matrix of a length of line: cosh γl, Z₀ sinh γl; sinh γl/Z₀, cosh γl. Zero length is straight through.
 *
 * Accuracy: rounding, about 1e-15 times the length in radians; the line's own model is `propagation`'s.
 * Source: D. M. Pozar, Microwave Engineering, table 4.1 (from memory).
 *
 * @param parallel so many equal lengths side by side, which divides Z₀ [1]
 */
export function lineChain(line: Line, length_m: number, frequency_MHz: number, parallel = 1): Chain {
  const { gamma, impedance_ohm } = propagation(line, frequency_MHz);
  const z = cx.scale(impedance_ohm, 1 / parallel);
  const x = gamma.re * length_m;
  const y = gamma.im * length_m;
  const cosh = cx.of(Math.cosh(x) * Math.cos(y), Math.sinh(x) * Math.sin(y));
  const sinh = cx.of(Math.sinh(x) * Math.cos(y), Math.cosh(x) * Math.sin(y));
  return { a: cosh, b: cx.mul(z, sinh), c: cx.div(sinh, z), d: cosh };
}
