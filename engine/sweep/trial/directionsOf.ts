import { rearAzimuths } from "../../readouts/rearAzimuths.ts";
import type { Directions } from "./arraySample.ts";
import { arrivalElevations } from "./arrivalElevations.ts";
import type { TrialLook } from "./TrialLook.ts";

/** The directions a sample has to hold for the figures of a look: all round at the path's elevation, ahead at those of arrival. */
export function directionsOf({ pathElevation_deg, rearSector_deg, arrival_deg }: TrialLook): Directions {
  const arriving = arrival_deg ? arrivalElevations(arrival_deg).map((at) => at.elevation_deg) : [];
  const ahead_deg = arriving.filter((elevation_deg) => elevation_deg !== pathElevation_deg);
  return {
    elevations_deg: [pathElevation_deg],
    azimuths_deg: [...new Set([0, 180, ...rearAzimuths(rearSector_deg)])],
    ...(ahead_deg.length > 0 && { ahead_deg }),
  };
}
