import type { FeedSweep } from "./FeedSweep.ts";
import { swr } from "./swr.ts";

export type BandQuantity = "swr" | "resistance" | "reactance";

/** R and X of a sweep at a frequency, straight between samples; NaN outside it and beside a sample that is not finite. */
export function readSweep(sweep: FeedSweep, frequency_MHz: number): { resistance_ohm: number; reactance_ohm: number } {
  const f = sweep.frequency_MHz;
  const i = f.findIndex((at) => at >= frequency_MHz);
  if (i < 0 || !(frequency_MHz >= f[0]!)) return { resistance_ohm: Number.NaN, reactance_ohm: Number.NaN };
  const j = Math.max(1, i);
  const t = f[i] === frequency_MHz && i === 0 ? 0 : (frequency_MHz - f[j - 1]!) / (f[j]! - f[j - 1]!);
  const at = (a: readonly number[]) => (t === 0 ? a[j - 1]! : t === 1 ? a[j]! : a[j - 1]! + t * (a[j]! - a[j - 1]!));
  return { resistance_ohm: at(sweep.resistance_ohm), reactance_ohm: at(sweep.reactance_ohm) };
}

/** The one figure of a quantity at a frequency. */
export function readQuantity(sweep: FeedSweep, quantity: BandQuantity, frequency_MHz: number): number {
  const z = readSweep(sweep, frequency_MHz);
  if (quantity === "resistance") return z.resistance_ohm;
  if (quantity === "reactance") return z.reactance_ohm;
  return swr(z.resistance_ohm, z.reactance_ohm);
}
