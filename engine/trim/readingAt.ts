import type { Complex } from "../contract.ts";
import type { BenchPoint } from "../plan/PlanBench.ts";

/** A reading's impedance at a frequency, by a straight line between its points; undefined outside them. */
export function readingAt(points: readonly BenchPoint[], frequency_MHz: number): Complex | undefined {
  const sorted = points.toSorted((a, b) => a.frequency_MHz - b.frequency_MHz);
  const same = sorted.find((p) => Math.abs(p.frequency_MHz - frequency_MHz) <= 1e-9 * frequency_MHz);
  if (same) return { re: same.resistance_ohm, im: same.reactance_ohm };
  const above = sorted.findIndex((p) => p.frequency_MHz > frequency_MHz);
  const [a, b] = [sorted[above - 1], sorted[above]];
  if (!a || !b) return undefined;
  const t = (frequency_MHz - a.frequency_MHz) / (b.frequency_MHz - a.frequency_MHz);
  return {
    re: a.resistance_ohm + t * (b.resistance_ohm - a.resistance_ohm),
    im: a.reactance_ohm + t * (b.reactance_ohm - a.reactance_ohm),
  };
}

/** Where a reading's reactance first passes through 0 on the way up, and R there, by straight lines; undefined where it does not. */
export function readingResonance(
  points: readonly BenchPoint[],
): { readonly frequency_MHz: number; readonly resistance_ohm: number } | undefined {
  const sorted = points.toSorted((a, b) => a.frequency_MHz - b.frequency_MHz);
  const below = sorted.findIndex((p, i) => p.reactance_ohm <= 0 && (sorted[i + 1]?.reactance_ohm ?? -1) > 0);
  const [a, b] = [sorted[below], sorted[below + 1]];
  if (!a || !b) return undefined;
  const t = -a.reactance_ohm / (b.reactance_ohm - a.reactance_ohm);
  return {
    frequency_MHz: a.frequency_MHz + t * (b.frequency_MHz - a.frequency_MHz),
    resistance_ohm: a.resistance_ohm + t * (b.resistance_ohm - a.resistance_ohm),
  };
}
