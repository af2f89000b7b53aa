import type { Ground } from "../contract.ts";
import { limits } from "../plan/limits.ts";

/** A season's way from the soil stated: conductivity by a factor of two, permittivity by the root of it. */
const CONDUCTIVITY_FACTOR = 2;
const PERMITTIVITY_FACTOR = Math.SQRT2;

export interface SoilAround {
  readonly id: "planned" | "drier" | "wetter";
  readonly ground: Ground;
}

/**
 * The plan's ground, and where it is soil a drier and a wetter one: soil is seldom known within a factor of two in
 * conductivity (a chosen range, no measurement). Kept within `limits`.
 */
export function soilsAround(ground: Ground): readonly SoilAround[] {
  if (ground.kind !== "soil") return [{ id: "planned", ground }];
  const at = (id: SoilAround["id"], sigma: number, eps: number): SoilAround => {
    const { least, most } = limits.soilPermittivity;
    return {
      id,
      ground: {
        kind: "soil",
        relativePermittivity: Math.min(most, Math.max(least, ground.relativePermittivity * eps)),
        conductivity_SPerM: Math.min(limits.soilConductivity_SPerM.most, ground.conductivity_SPerM * sigma),
      },
    };
  };
  return [
    { id: "planned", ground },
    at("drier", 1 / CONDUCTIVITY_FACTOR, 1 / PERMITTIVITY_FACTOR),
    at("wetter", CONDUCTIVITY_FACTOR, PERMITTIVITY_FACTOR),
  ];
}
