import type { ScreenInput } from "./ScreenInput.ts";
import { perfectRadius_m } from "./surfaceAdmittance.ts";

/** A place on the ground about which the integrand rises like 1/ρ or falls to zero: a foot, a hub of radials, or both. */
export interface Centre {
  readonly x_m: number;
  readonly y_m: number;
  /** Where the soil begins: edge of the perfect part of the radials, or the conductor's own skin. */
  readonly inner_m: number;
  /** True where no radials soften the integrand: it then falls as 1/ρ all the way in. */
  readonly bare: boolean;
}

/** Feet and hubs closer than this are one [m]; the contract joins ends at the same distance. */
const SAME_PLACE_M = 1e-6;

/** Collects the feet of conductors and the hubs of radials, each place once. */
export function gatherCentres(input: ScreenInput): Centre[] {
  const places: { x_m: number; y_m: number; skin_m: number; perfect_m: number }[] = [];
  const at = (x_m: number, y_m: number) => {
    const known = places.find((p) => Math.abs(p.x_m - x_m) < SAME_PLACE_M && Math.abs(p.y_m - y_m) < SAME_PLACE_M);
    if (known) return known;
    const fresh = { x_m, y_m, skin_m: 0, perfect_m: 0 };
    places.push(fresh);
    return fresh;
  };
  for (const line of input.lines) {
    const place = at(line.x_m, line.y_m);
    place.skin_m = Math.max(place.skin_m, line.radius_m);
  }
  for (const screen of input.screens) {
    const place = at(screen.x_m, screen.y_m);
    if (screen.count > 0)
      place.perfect_m = Math.max(place.perfect_m, Math.min(perfectRadius_m(screen), screen.length_m));
  }
  const s = input.sloping;
  for (let i = 0; s && i < s.radius_m.length; i++)
    for (const end of [s.from_m, s.to_m])
      if (Math.abs(end[3 * i + 2]!) < SAME_PLACE_M) {
        const place = at(end[3 * i]!, end[3 * i + 1]!);
        place.skin_m = Math.max(place.skin_m, s.radius_m[i]!);
      }
  return places.map((p) => ({
    x_m: p.x_m,
    y_m: p.y_m,
    inner_m: Math.max(p.perfect_m, p.skin_m),
    bare: p.perfect_m === 0,
  }));
}
