import type { PlanReadout } from "../../engine/index.ts";
import { bearing_deg, bearingText } from "./bearing.ts";
import { figure } from "./figure.ts";
import { readCut } from "./readCut.ts";
import type { LoudDirection } from "./worstBehind.ts";

/** What the sector behind does, in a sentence. */
export function rearWords(
  readout: PlanReadout | null,
  worst: readonly LoudDirection[],
  sector_deg: number,
  heading_deg: number,
): string {
  const sector = `Rear sector ${figure(sector_deg, 0)}° wide`;
  const loudest = worst[0];
  if (!readout || !loudest) return `${sector}: no figure yet.`;
  const toward = worst.map((w) => bearingText(bearing_deg(w.azimuth_deg, heading_deg))).join(" and ");
  const below = readCut(readout.azimuthCut, 0) - loudest.gain_dBi;
  const against = below >= 0 ? `${figure(below, 1)} dB below the beam` : `${figure(-below, 1)} dB above the beam`;
  return `${sector}: loudest toward ${toward}, ${against}.`;
}
