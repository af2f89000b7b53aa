import type { Plan } from "../../contract.ts";

/** The same wires at another frequency: no length is rescaled. */
export function withFrequency<P extends Plan>(plan: P, frequency_MHz: number): P {
  return { ...plan, frequency_MHz };
}
