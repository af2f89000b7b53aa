import type { Cut } from "../../engine/index.ts";
import { bearing_deg, bearingText } from "./bearing.ts";
import type { DesignTrace } from "./DesignTrace.ts";
import { elevationWords } from "./elevationWords.ts";
import { figure } from "./figure.ts";
import { readCut } from "./readCut.ts";

/** The elevation cut in words: each design's loudest elevation, and its gain ahead and behind at the path's. */
export function elevationSummary(traces: readonly DesignTrace[], path_deg: number, heading_deg: number): string {
  const told = traces.flatMap(({ name, readout }) => {
    if (!readout) return [];
    const cut = readout.elevationCut;
    const top = loudest(cut);
    if (!top) return [`${name}: no field in this plane.`];
    const ahead = figure(readCut(cut, path_deg), 1);
    const behind = figure(readCut(cut, 180 - path_deg), 1);
    return [
      `${name}: loudest ${elevationWords(top.angle)}, ${figure(top.gain_dBi, 1)} dBi; at ${path_deg}° ${ahead} dBi ahead, ${behind} dBi behind.`,
    ];
  });
  if (told.length === 0) return "Elevation cut: no pattern yet.";
  return `Gain against elevation through the beam, ahead toward ${bearingText(heading_deg)}. ${told.join(" ")}`;
}

/** The azimuth cut in words: each design's loudest bearing and what is left straight behind. */
export function azimuthSummary(traces: readonly DesignTrace[], elevation_deg: number, heading_deg: number): string {
  const told = traces.flatMap(({ name, readout }) => {
    if (!readout) return [];
    const cut = readout.azimuthCut;
    const top = loudest(cut);
    if (!top) return [`${name}: no field at this elevation.`];
    const toward = bearingText(bearing_deg(top.angle, heading_deg));
    return [
      `${name}: loudest toward ${toward}, ${figure(top.gain_dBi, 1)} dBi; straight behind ${figure(readCut(cut, 180), 1)} dBi.`,
    ];
  });
  if (told.length === 0) return "Azimuth cut: no pattern yet.";
  return `Gain by compass bearing at ${elevation_deg}° elevation, beam toward ${bearingText(heading_deg)}. ${told.join(" ")}`;
}

function loudest({ angle_deg, gain_dBi }: Cut): { angle: number; gain_dBi: number } | null {
  let top = -1;
  for (let i = 0; i < gain_dBi.length; i++)
    if (Number.isFinite(gain_dBi[i]) && (top < 0 || gain_dBi[i]! > gain_dBi[top]!)) top = i;
  return top < 0 ? null : { angle: angle_deg[top]!, gain_dBi: gain_dBi[top]! };
}
