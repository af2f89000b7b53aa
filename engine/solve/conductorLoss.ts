import type { Segments } from "../wires/Segments.ts";

/** Power lost in the conductors, ½ Σ Re Z_i ∫ |I|² ds, exact for linear currents [W]. */
export function conductorLoss(segments: Segments, currents: Float64Array): number {
  let total = 0;
  for (let s = 0; s < segments.count; s++) {
    const r = segments.internal_ohmPerM[2 * s]!;
    if (r === 0) continue;
    const ar = currents[4 * s]!;
    const ai = currents[4 * s + 1]!;
    const br = currents[4 * s + 2]!;
    const bi = currents[4 * s + 3]!;
    total += (r * segments.length[s]! * (ar * ar + ai * ai + br * br + bi * bi + ar * br + ai * bi)) / 6;
  }
  return total;
}
