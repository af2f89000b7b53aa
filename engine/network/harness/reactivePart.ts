import type { PartQuality } from "../match/Match.ts";
import type { Part } from "./Network.ts";

/**
 * The coil or capacitor with a given reactance or susceptance at one frequency, as a part between two nodes; nothing for
 * a susceptance of zero (below 1e-12 S). Positive reactance and negative susceptance are coils.
 */
export function reactivePart(
  id: string,
  from: string,
  to: string,
  value: { readonly reactance_ohm: number } | { readonly susceptance_S: number },
  frequency_MHz: number,
  quality: PartQuality,
): readonly Part[] {
  const omega = 2 * Math.PI * frequency_MHz;
  const b = "susceptance_S" in value ? value.susceptance_S : -1 / value.reactance_ohm;
  if (Math.abs(b) < 1e-12) return [];
  const q = b < 0 ? quality.coilQ : quality.capacitorQ;
  const rest = { id, from, to, ...(q !== undefined && { q }) };
  return b < 0
    ? [{ kind: "coil", inductance_uH: -1 / (omega * b), ...rest }]
    : [{ kind: "capacitor", capacitance_pF: (1e6 * b) / omega, ...rest }];
}
