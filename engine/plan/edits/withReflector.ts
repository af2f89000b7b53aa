import type { Plan } from "../../contract.ts";
import { wavelength_m } from "../../units.ts";
import { limits } from "../limits.ts";
import { resonantHeight_m } from "../resonantHeight_m.ts";
import { drivenOf } from "./drivenOf.ts";
import { reflectorOf } from "./reflectorOf.ts";

/**
 * Adds an unfed upright, joined to radials of its own like the driven's, 0.2 wavelength behind the rearmost element.
 *
 * Its height starts from the resonant height for the driven's thickness, not from the driven's actual height, which
 * may be off resonance. It is 4.5 % longer, or enough for about +30 ohm of reactance at its base if that is more (it
 * is, for tubes): the reactance rises by about 384 Ω · ln(h/d) per wavelength of height, from the same solutions as
 * `resonantHeight_m`. Too long costs a little; too short turns the beam round.
 *
 * A plan that has a reflector, no driven element, or no room for another element comes back as it was.
 */
export function withReflector<P extends Plan>(plan: P): P {
  const driven = drivenOf(plan);
  if (!driven || reflectorOf(plan) || plan.elements.length >= limits.elements.most) return plan;
  const wavelength = wavelength_m(plan.frequency_MHz);
  const rearmost_m = Math.min(...plan.elements.map((element) => element.forward_m));
  const resonant_m = resonantHeight_m(plan.frequency_MHz, driven.diameter_mm);
  const slope_ohmPerM = (384 * Math.log((resonant_m * 1000) / driven.diameter_mm)) / wavelength;
  let id = "reflector";
  for (let number = 2; plan.elements.some((element) => element.id === id); number++) id = `reflector-${number}`;
  return {
    ...plan,
    elements: [
      ...plan.elements,
      {
        ...driven,
        id,
        forward_m: round(rearmost_m - 0.2 * wavelength, 100),
        height_m: round(Math.max(1.045 * resonant_m, resonant_m + 30 / slope_ohmPerM), 1000),
        base: { kind: "joined" },
      },
    ],
  };
}

/** To centimetres or millimetres: a suggestion should read like a length that someone can measure. */
function round(length_m: number, perMetre: number): number {
  return Math.round(length_m * perMetre) / perMetre;
}
