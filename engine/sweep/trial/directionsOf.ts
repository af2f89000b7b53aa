import { rearAzimuths } from "../../readouts/rearAzimuths.ts";
import type { Directions } from "./arraySample.ts";
import { arrivalElevations } from "./arrivalElevations.ts";
import type { TrialLook } from "./TrialLook.ts";

/** The directions a sample has to hold for the figures of a look: the path's elevation first, then those of arrival. */
export function directionsOf({ pathElevation_deg, rearSector_deg, arrival_deg }: TrialLook): Directions {
  const arriving = arrival_deg ? arrivalElevations(arrival_deg).map((at) => at.elevation_deg) : [];
  return {
    elevations_deg: [...new Set([pathElevation_deg, ...arriving])],
    azimuths_deg: [...new Set([0, 180, ...rearAzimuths(rearSector_deg)])],
  };
}
