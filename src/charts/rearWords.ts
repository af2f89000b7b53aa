import type { PlanReadout } from "../../engine/index.ts";
import { bearing_deg, bearingText } from "./bearing.ts";
import { figure } from "./figure.ts";
import { readCut } from "./readCut.ts";
import type { LoudDirection } from "./worstBehind.ts";

/** What the sector behind does, in a sentence. */
export function rearWords(
  readout: PlanReadout | null,
  worst: LoudDirection | null,
  sector_deg: number,
  heading_deg: number,
): string {
  const sector = `Rear sector ${figure(sector_deg, 0)}° wide`;
  if (!readout || !worst) return `${sector}: no figure yet.`;
  const toward = bearingText(bearing_deg(worst.azimuth_deg, heading_deg));
  const below = readCut(readout.azimuthCut, 0) - worst.gain_dBi;
  const against = below >= 0 ? `${figure(below, 1)} dB below the beam` : `${figure(-below, 1)} dB above the beam`;
  // Left and right alike is the rule for elements in one line; naming one side only would look like a fault.
  const mirror = readCut(readout.azimuthCut, -worst.azimuth_deg);
  const isBoth = Math.abs(worst.azimuth_deg) < 179.5 && Math.abs(mirror - worst.gain_dBi) < 0.05;
  const other = bearingText(bearing_deg(-worst.azimuth_deg, heading_deg));
  return `${sector}: loudest toward ${isBoth ? `${toward} and ${other}` : toward}, ${against}.`;
}
