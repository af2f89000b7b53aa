import type { Cut } from "../../engine/index.ts";
import { readCut } from "./readCut.ts";

export interface LoudDirection {
  /** −180..180, counter-clockwise from the beam. */
  readonly azimuth_deg: number;
  readonly gain_dBi: number;
}

/** Below what is printed: directions this alike are named together. */
const alike_dB = 0.05;

/**
 * The loudest direction of an azimuth cut within the sector of full width `sector_deg` centred on straight back, and
 * its mirror image when that is as loud: for elements in one line both always are, and to name one side only would
 * look like a fault. Empty when nothing finite lies there.
 */
export function worstBehind(cut: Cut, sector_deg: number): LoudDirection[] {
  let worst: LoudDirection | null = null;
  for (let i = 0; i < cut.angle_deg.length; i++) {
    const azimuth_deg = cut.angle_deg[i]!;
    const gain_dBi = cut.gain_dBi[i]!;
    if (180 - Math.abs(azimuth_deg) > sector_deg / 2 + 1e-9 || !Number.isFinite(gain_dBi)) continue;
    if (!worst || gain_dBi > worst.gain_dBi) worst = { azimuth_deg, gain_dBi };
  }
  if (!worst) return [];
  const mirror = { azimuth_deg: -worst.azimuth_deg, gain_dBi: readCut(cut, -worst.azimuth_deg) };
  const isStraight = Math.abs(worst.azimuth_deg) > 179.5 || worst.azimuth_deg === 0;
  return isStraight || !(worst.gain_dBi - mirror.gain_dBi < alike_dB) ? [worst] : [worst, mirror];
}
