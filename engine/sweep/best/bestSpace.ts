import type { BestDesign } from "./BestPicture.ts";
import type { BestBounds } from "./BestRequest.ts";
import type { Sides } from "./breed.ts";

/** What is changed, in the order a place of the search holds it. */
export type Lengths = Pick<BestDesign, "driven_m" | "reflector_m" | "spacing_m" | "coil_ohm">;

export const lengthsAt = (at: readonly number[]): Lengths => ({
  driven_m: at[0]!,
  reflector_m: at[1]!,
  spacing_m: at[2]!,
  coil_ohm: at[3]!,
});

export const placeOf = ({ driven_m, reflector_m, spacing_m, coil_ohm }: Lengths): number[] => [
  driven_m,
  reflector_m,
  spacing_m,
  coil_ohm,
];

export function sidesOf({ driven_m, reflector_m, spacing_m, coil_ohm }: BestBounds): Sides {
  const all = [driven_m, reflector_m, spacing_m, coil_ohm];
  return { least: all.map(({ least }) => least), most: all.map(({ most }) => most) };
}

/** A place as it can be cut and measured: to the millimetre below and a tenth of an ohm, within bounds. */
export function cutTo(at: readonly number[], { least, most }: Sides): number[] {
  const perUnit = [1000, 1000, 1000, 10];
  return at.map((x, v) => {
    const cut = Math.floor(x * perUnit[v]! + 1e-6) / perUnit[v]!;
    return Math.min(most[v]!, Math.max(least[v]!, cut));
  });
}
