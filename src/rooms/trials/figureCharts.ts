import type { FigureCurves, TrialLook } from "../../../engine/index.ts";
import type { LineChartProps } from "./chart/LineChart.tsx";

type Chart = Pick<LineChartProps, "title" | "note" | "said" | "lines" | "unit" | "decimals"> &
  Partial<Pick<LineChartProps, "least" | "most" | "limits">>;

/** SWR above this is drawn out of the chart. */
const swrTop = 5;
/** Ohms beyond this are out of the chart, so that what is near resonance keeps its room. */
const mostOhm = 400;

/** The figures of a walk or a band, as charts of one unit each. */
export function figureCharts(figures: FigureCurves, look: TrialLook | undefined): readonly Chart[] {
  const arrival = look?.arrival_deg;

  const live = (id: string, name: string, y: readonly number[]) => ({ id, name, role: "live" as const, style: 0, y });
  const second = (id: string, name: string, y: readonly number[]) => ({ id, name, role: "pin" as const, style: 0, y });
  return [
    {
      title: "Front to back",
      note: "dB; below 0 the beam is turned round",
      said: "",
      unit: "dB",
      decimals: 1,
      lines: [
        live("back", "straight back", figures.frontToBack_dB),
        second("rear", "worst behind", figures.frontToRear_dB),
      ],
    },
    {
      title: "Gain ahead",
      note: "dBi, at the path’s elevation and averaged",
      said: "",
      unit: "dBi",
      decimals: 2,
      lines: [
        live("forward", `at ${look?.pathElevation_deg ?? ""}°`, figures.forward_dBi),
        ...(figures.pathGain_dBi
          ? [
              second(
                "path",
                arrival ? `mean ${arrival.from}° to ${arrival.to}°` : "mean over the path",
                figures.pathGain_dBi,
              ),
            ]
          : []),
      ],
    },
    {
      title: "Feed impedance",
      note: "Ω",
      said: "",
      unit: "Ω",
      decimals: 1,
      least: -mostOhm,
      most: mostOhm,
      lines: [live("r", "R", figures.resistance_ohm), second("x", "X", figures.reactance_ohm)],
    },
    {
      title: "SWR at the feedpoint",
      note: "against 50 Ω",
      said: "",
      unit: "",
      decimals: 2,
      least: 1,
      most: swrTop,
      limits: [2],
      lines: [live("swr", "SWR", figures.swr50)],
    },
  ];
}
