import type { RadialLaying } from "./RadialsPicture.ts";

/** How radials lie, without what they do. */
export type Lay = Pick<RadialLaying, "height_m" | "fields">;

/** Fewest radials under an element, and the lengths between which they are cut, in wavelengths. */
export const FEWEST = 2;
export const SHORTEST_wl = 0.05;
export const LONGEST_wl = 0.5;

const COUNTS = [2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 60, 90, 120];
/** Lengths first tried: each about 1.39 times the last. */
const LENGTHS = 8;

/** Numbers of radials worth trying, up to `most` and that itself, but none for which `wire_m` leaves less than the shortest. */
export function countsToTry(most: number, wire_m: number, wavelength: number): number[] {
  const counts = [...COUNTS.filter((count) => count < most), most];
  return counts.filter((count) => count * SHORTEST_wl * wavelength <= wire_m + 1e-9);
}

/** Lengths first tried with any number of radials, from the shortest to the longest in equal ratios [m]. */
export function lengthsToTry(wavelength: number): number[] {
  return Array.from(
    { length: LENGTHS },
    (_, i) => SHORTEST_wl * (LONGEST_wl / SHORTEST_wl) ** (i / (LENGTHS - 1)) * wavelength,
  ).map(toCentimetre);
}

/** Cut to the centimetre below, so that no more wire is used than there is; the hair more keeps what is a centimetre already. */
export function toCentimetre(length_m: number): number {
  return Math.floor(length_m * 100 + 1e-6) / 100;
}

/** Wire that lies [m]. */
export function wireOf({ fields }: Lay): number {
  return fields.reduce((sum, { count, length_m }) => sum + count * length_m, 0);
}

/** One name for one laying. */
export function layKey({ height_m, fields }: Lay): string {
  return `${height_m}|${fields.map(({ count, length_m }) => `${count}×${length_m}`).join("|")}`;
}
