import type { Complex } from "../contract.ts";

/** Coil of quality Q: ωL (1/Q + j) [µH, MHz; ohm]. Q absent: no loss. */
export function coilImpedance(inductance_uH: number, frequency_MHz: number, q = Number.POSITIVE_INFINITY): Complex {
  const x = 2 * Math.PI * frequency_MHz * inductance_uH;
  return { re: x / q, im: x };
}
