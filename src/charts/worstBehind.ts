import type { Cut } from "../../engine/index.ts";

export interface LoudDirection {
  /** −180..180, counter-clockwise from the beam. */
  readonly azimuth_deg: number;
  readonly gain_dBi: number;
}

/**
 * The loudest direction of an azimuth cut within the sector of full width `sector_deg` centred on straight back;
 * null when nothing finite lies there.
 */
export function worstBehind(cut: Cut, sector_deg: number): LoudDirection | null {
  let worst: LoudDirection | null = null;
  for (let i = 0; i < cut.angle_deg.length; i++) {
    const azimuth_deg = cut.angle_deg[i]!;
    const gain_dBi = cut.gain_dBi[i]!;
    if (180 - Math.abs(azimuth_deg) > sector_deg / 2 + 1e-9 || !Number.isFinite(gain_dBi)) continue;
    if (!worst || gain_dBi > worst.gain_dBi) worst = { azimuth_deg, gain_dBi };
  }
  return worst;
}
