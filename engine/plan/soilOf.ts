import type { Ground } from "../contract.ts";
import { type SoilClass, soils } from "./soils.ts";

/** The class that a ground's two constants are exactly those of; undefined for other figures or no soil. */
export function soilOf(ground: Ground): SoilClass | undefined {
  if (ground.kind !== "soil") return undefined;
  return soils.find(
    ({ relativePermittivity, conductivity_SPerM }) =>
      relativePermittivity === ground.relativePermittivity && conductivity_SPerM === ground.conductivity_SPerM,
  );
}
