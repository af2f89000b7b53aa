import type { Complex } from "../contract.ts";

/** Capacitor of quality Q: ωC (1/Q + j) [pF, MHz; S]. Q absent: no loss. */
export function capacitorAdmittance(
  capacitance_pF: number,
  frequency_MHz: number,
  q = Number.POSITIVE_INFINITY,
): Complex {
  const b = 2e-6 * Math.PI * frequency_MHz * capacitance_pF;
  return { re: b / q, im: b };
}
