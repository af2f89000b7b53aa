import type { Rung } from "./PlanReadout.ts";
import { rearAzimuths } from "./rearAzimuths.ts";

/**
 * Reads one elevation: gain ahead, straight back, and in the loudest direction of the rear sector.
 * The sector is searched every two degrees, both edges included; patterns of such small arrays vary by less than
 * 0.01 dB over half a step.
 *
 * @param mirrored the gain is the same at azimuths φ and −φ: one side of the sector tells all, and of two directions that
 *   are alike the one to the left is named, as it is where both are asked
 */
export function readRung(
  gain: (elevation_deg: number, azimuth_deg: number) => number,
  elevation_deg: number,
  rearSector_deg: number,
  mirrored = false,
): Rung {
  const forward_dBi = gain(elevation_deg, 0);
  const back_dBi = gain(elevation_deg, 180);
  let worstRear_dBi = back_dBi;
  let worstRearAzimuth_deg = 180;
  for (const azimuth of rearAzimuths(rearSector_deg)) {
    if (mirrored && azimuth > 180) break;
    const g = gain(elevation_deg, azimuth);
    if (g > worstRear_dBi + 1e-9) {
      worstRear_dBi = g;
      worstRearAzimuth_deg = azimuth > 180 ? azimuth - 360 : azimuth;
    }
  }
  return {
    elevation_deg,
    forward_dBi,
    back_dBi,
    worstRear_dBi,
    worstRearAzimuth_deg,
    frontToBack_dB: forward_dBi - back_dBi,
    frontToRear_dB: forward_dBi - worstRear_dBi,
  };
}
