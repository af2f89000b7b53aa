import type { StraightIntegral } from "./straightIntegral.ts";

/** Places and directions are told apart to this length [m]. */
const GRAIN_M = 1e-7;
/** Currents may differ by this part of the largest: rounding, where a symmetry was solved for. */
const ALIKE = 1e-11;

/**
 * Whether every line has its image in the plane y = 0 among the lines, with the same current: then their field has θ̂ the same
 * at azimuths φ and −φ, and φ̂ turned.
 */
export function mirroredLines(lines: readonly StraightIntegral[]): boolean {
  const grain = (value: number) => Math.round(value / GRAIN_M);
  const nameOf = ({ x_m, y_m, z_m, tx, ty, tz }: StraightIntegral, side: 1 | -1) =>
    `${grain(x_m)},${grain(side * y_m)},${grain(z_m)},${grain(tx)},${grain(side * ty)},${grain(tz)}`;
  const byName = new Map(lines.map((line) => [nameOf(line, 1), line]));
  let largest = 0;
  for (const { series } of lines) for (const value of series) largest = Math.max(largest, Math.abs(value));
  return lines.every((line) => {
    const image = byName.get(nameOf(line, -1));
    if (!image || image.series.length !== line.series.length) return false;
    for (let i = 0; i < line.series.length; i++)
      if (Math.abs(line.series[i]! - image.series[i]!) > ALIKE * largest) return false;
    return true;
  });
}
