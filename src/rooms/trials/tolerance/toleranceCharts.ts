import type { ToleranceBand, ToleranceCut, TolerancePicture } from "../../../../engine/index.ts";
import type { Line } from "../chart/LineChart.tsx";

/** Cuts go down this far below their loudest. */
const deep_dB = 30;

/** The ladder and both cuts, each as its middle with the range about it. */
export function toleranceCharts(bands: NonNullable<TolerancePicture["bands"]>) {
  const { ladder, elevationCut, azimuthCut } = bands;
  const part = (key: "forward_dBi" | "back_dBi", which: keyof ToleranceBand) => ladder.map((rung) => rung[key][which]);
  const line = (id: string, name: string, role: Line["role"], y: readonly number[]): Line => ({
    id,
    name,
    role,
    style: 0,
    y,
  });
  const cut = (id: "elevation" | "azimuth", { angle_deg, low_dBi, middle_dBi, high_dBi }: ToleranceCut) => ({
    id,
    x: angle_deg,
    lines: [line("middle", "in the middle", "live", middle_dBi)],
    ranges: [{ id: "range", low: low_dBi, high: high_dBi }],
    least: Math.max(...high_dBi) - deep_dB,
    note: "dBi; shaded: 90 of 100",
    ...(id === "elevation"
      ? { title: "Elevation cut, with errors", xName: "up from ahead; 180° is behind" }
      : { title: "Azimuth cut, with errors", xName: "from ahead, counter-clockwise" }),
  });
  return [
    {
      id: "ladder" as const,
      title: "Ladder, with errors",
      note: "dBi; shaded: 90 of 100",
      xName: "elevation",
      x: ladder.map((rung) => rung.elevation_deg),
      lines: [
        line("ahead", "ahead", "live", part("forward_dBi", "middle")),
        line("behind", "straight back", "pin", part("back_dBi", "middle")),
      ],
      ranges: [
        { id: "ahead", low: part("forward_dBi", "low"), high: part("forward_dBi", "high") },
        { id: "behind", low: part("back_dBi", "low"), high: part("back_dBi", "high") },
      ],
    },
    cut("elevation", elevationCut),
    cut("azimuth", azimuthCut),
  ];
}
