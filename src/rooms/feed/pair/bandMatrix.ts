import { type Complex, feedAt, type PairPoint } from "../../../../engine/index.ts";

/** Frequencies at which a matrix is solved so that the band lies between: evenly, and the design frequency itself. */
export function matrixFrequencies(from_MHz: number, to_MHz: number, design_MHz: number): readonly number[] {
  const low = Math.min(from_MHz, design_MHz);
  const high = Math.max(to_MHz, design_MHz);
  const even = [0, 1, 2, 3].map((i) => low + ((high - low) * i) / 3);
  const apart = (high - low) / 100;
  return [...even.filter((f) => Math.abs(f - design_MHz) > apart), design_MHz].sort((a, b) => a - b);
}

/** A matrix over a band from a few that were solved: every entry on the cubic through its neighbours, exact at the solved ones. */
export function matrixOver(solved: readonly PairPoint[], frequencies_MHz: readonly number[]): readonly PairPoint[] {
  const size = solved[0]?.impedance_ohm.length ?? 0;
  const entry = (i: number, j: number, f: number): Complex =>
    feedAt(
      solved.map((point) => ({ frequency_MHz: point.frequency_MHz, impedance_ohm: point.impedance_ohm[i]![j]! })),
      f,
    );
  const all = Array.from({ length: size }, (_, i) => i);
  return frequencies_MHz.map((frequency_MHz) => ({
    frequency_MHz,
    impedance_ohm: all.map((i) => all.map((j) => entry(i, j, frequency_MHz))),
  }));
}
