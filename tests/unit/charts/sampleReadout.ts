import type { Cut, PlanReadout, Rung } from "../../../engine/index.ts";

/** A heart-shaped pattern in closed form, level + 20 lg(|1 + back cos az|/2) and a low-angle taper: made up for tests. */
export function sampleGain(elevation_deg: number, azimuth_deg: number, level_dBi: number): number {
  const e = (elevation_deg * Math.PI) / 180;
  const a = (azimuth_deg * Math.PI) / 180;
  return level_dBi + 20 * Math.log10((1 + 0.5 * Math.cos(e) * Math.cos(a)) / 1.5) + 20 * Math.log10(Math.sin(2 * e));
}

/** A whole readout of that pattern; the horizon and the zenith are exactly zero field. */
export function sampleReadout(level_dBi = 4, rungs_deg: readonly number[] = [3, 5, 8, 10, 15, 20, 30]): PlanReadout {
  const elevation = Array.from({ length: 181 }, (_, i) => i);
  const azimuth = Array.from({ length: 361 }, (_, i) => i - 180);
  const elevationCut: Cut = {
    angle_deg: elevation,
    gain_dBi: elevation.map((e) =>
      e % 90 === 0 ? Number.NEGATIVE_INFINITY : sampleGain(e < 90 ? e : 180 - e, e < 90 ? 0 : 180, level_dBi),
    ),
  };
  const rung = (elevation_deg: number): Rung => {
    const forward_dBi = sampleGain(elevation_deg, 0, level_dBi);
    const back_dBi = sampleGain(elevation_deg, 180, level_dBi);
    const worstRear_dBi = sampleGain(elevation_deg, 120, level_dBi);
    return {
      elevation_deg,
      forward_dBi,
      back_dBi,
      worstRear_dBi,
      worstRearAzimuth_deg: 120,
      frontToBack_dB: forward_dBi - back_dBi,
      frontToRear_dB: forward_dBi - worstRear_dBi,
    };
  };
  return {
    feeds: [{ elementId: "driven", impedance_ohm: { re: 31.2, im: 12.4 }, swr50: 1.7 }],
    baseCurrents: [
      { elementId: "driven", current: { re: 1, im: 0 } },
      { elementId: "reflector", current: { re: -0.3, im: 0.4 } },
    ],
    efficiency: 0.38,
    elevationCut,
    azimuthCut: { angle_deg: azimuth, gain_dBi: azimuth.map((a) => sampleGain(8, a, level_dBi)) },
    ladder: rungs_deg.map(rung),
    path: rung(8),
    halfPowerWidth_deg: 146,
    notes: [],
  };
}
