import { memo, useMemo } from "react";
import { BandDrawing } from "./BandDrawing.tsx";
import type { BandTrace } from "./BandTrace.ts";
import { bandLayout, type SwrTop } from "./bandLayout.ts";
import { ChartFrame } from "./ChartFrame.tsx";
import { type FeedFacts, type FrequencySpan, feedFacts } from "./feedFacts.ts";
import { feedWords } from "./feedWords.ts";
import { figure, withUnit } from "./figure.ts";
import { MarkerPad } from "./MarkerPad.tsx";
import { megahertz } from "./megahertz.ts";
import { type BandQuantity, readQuantity } from "./readSweep.ts";
import { sweepCurve } from "./sweepCurve.ts";
import { TraceKey } from "./TraceKey.tsx";
import { useChartSize } from "./useChartSize.ts";
import "./BandChart.css";

export interface BandChartProps {
  readonly traces: readonly BandTrace[];
  readonly quantity: BandQuantity;
  readonly band: FrequencySpan;
  /** What people call the band. */
  readonly bandLabel: string;
  /** The frequency the plan is for. */
  readonly design_MHz: number;
  /** SWR at the top of the chart. */
  readonly top: SwrTop;
  readonly marker_MHz: number;
  readonly stale: boolean;
  onMarker(frequency_MHz: number): void;
}

const titles = {
  swr: "SWR at the feedpoint, against 50 Ω",
  resistance: "Resistance R at the feedpoint",
  reactance: "Reactance X at the feedpoint",
} as const;

/** One quantity of the feedpoints over frequency, with the band and its edges. */
export const BandChart = memo(function BandChart(p: BandChartProps) {
  const { ref, width_px, text_px } = useChartSize();
  const { traces, quantity, band, design_MHz, top } = p;
  const curves = useMemo(() => traces.map((t) => ({ ...t, curve: sweepCurve(t.sweep, quantity) })), [traces, quantity]);
  const layout = useMemo(() => {
    const all = curves.flatMap((c) => c.curve);
    const frequencies = all.map((s) => s.frequency_MHz);
    const margin = (band.to_MHz - band.from_MHz) / 6;
    return bandLayout({
      width_px,
      text_px,
      quantity,
      top,
      from_MHz: Math.min(band.from_MHz - margin, design_MHz, ...frequencies),
      to_MHz: Math.max(band.to_MHz + margin, design_MHz, ...frequencies),
      values: all.map((s) => s.value),
    });
  }, [curves, width_px, text_px, quantity, top, band, design_MHz]);
  const facts: readonly (FeedFacts & { id: string; name: string })[] = useMemo(
    () => traces.filter((t) => t.role === "live").map((t) => ({ id: t.id, name: t.name, ...feedFacts(t.sweep, band) })),
    [traces, band],
  );

  const text = (value: number) => (quantity === "swr" ? figure(value, 2) : withUnit(figure(value, 1), "Ω"));
  const readings = traces.map((t) => ({ ...t, value: text(readQuantity(t.sweep, quantity, p.marker_MHz)) }));
  const where = `${megahertz(p.marker_MHz)} MHz`;
  const told = facts.map((f) => `${f.name}: ${feedWords(f, band).join(" ")}`).join(" ");

  return (
    <ChartFrame
      title={titles[quantity]}
      note={quantity === "swr" && top === 10 ? "logarithmic scale, band shaded" : "band shaded"}
      summary={`${titles[quantity]} over ${p.bandLabel}, ${megahertz(band.from_MHz)} to ${megahertz(band.to_MHz)} MHz. ${told || "No figures yet."}`}
      width_px={layout.width}
      height_px={layout.height}
      plotRef={ref}
      stale={p.stale}
      waiting={traces.length > 0 ? null : "No curve yet."}
      over={
        <MarkerPad
          label="Frequency to read, kHz"
          box={layout.plot}
          value={Math.round(p.marker_MHz * 1000)}
          min={Math.ceil(layout.frequencyAt([0, 0]) * 1000)}
          max={Math.floor(layout.frequencyAt([layout.width, 0]) * 1000)}
          home={Math.round(band.from_MHz * 1000)}
          end={Math.round(band.to_MHz * 1000)}
          valueText={`${where}: ${readings.map((r) => `${r.name} ${r.value}`).join(", ")}`}
          valueAt={(spot) => layout.frequencyAt(spot) * 1000}
          onValue={(kHz) => p.onMarker(kHz / 1000)}
        />
      }
      below={<TraceKey where={`read at ${where}`} entries={readings} />}
      table={{
        caption: `${titles[quantity]} by frequency`,
        heads: ["MHz", ...traces.map((t) => t.name)],
        rows: () => frequencyRows(traces, quantity, text),
      }}
    >
      <BandDrawing
        layout={layout}
        text_px={text_px}
        quantity={quantity}
        curves={curves}
        facts={facts}
        band={band}
        bandLabel={p.bandLabel}
        design_MHz={design_MHz}
        marker_MHz={p.marker_MHz}
      />
    </ChartFrame>
  );
});

function frequencyRows(
  traces: readonly BandTrace[],
  quantity: BandQuantity,
  text: (value: number) => string,
): string[][] {
  return (traces[0]?.sweep.frequency_MHz ?? []).map((f) => [
    megahertz(f),
    ...traces.map((t) => text(readQuantity(t.sweep, quantity, f))),
  ]);
}
