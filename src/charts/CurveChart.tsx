import { memo, useId, useMemo } from "react";
import { BandGround } from "./BandGround.tsx";
import { bandLayout, type SwrTop } from "./bandLayout.ts";
import { bandMarks } from "./bandMarks.ts";
import { ChartFrame } from "./ChartFrame.tsx";
import { type Curve, readCurve } from "./Curve.ts";
import { drawTraces } from "./drawTraces.ts";
import type { FrequencySpan } from "./feedFacts.ts";
import { figure, withUnit } from "./figure.ts";
import { MarkerPad } from "./MarkerPad.tsx";
import { MarkText } from "./MarkText.tsx";
import { markPath } from "./markPath.ts";
import { megahertz } from "./megahertz.ts";
import type { BandQuantity } from "./readSweep.ts";
import { TraceKey } from "./TraceKey.tsx";
import { TraceLabels } from "./TraceLabels.tsx";
import { traceClass } from "./traceClass.ts";
import { useChartSize } from "./useChartSize.ts";
import "./BandChart.css";

interface Props {
  readonly title: string;
  readonly note: string;
  /** A sentence on what the curves show, for who does not see them. */
  readonly said: string;
  readonly quantity: BandQuantity;
  readonly curves: readonly Curve[];
  readonly band: FrequencySpan;
  readonly bandLabel: string;
  readonly design_MHz: number;
  readonly top?: SwrTop;
  /** A level that is drawn strong, such as the highest SWR that is taken. */
  readonly limit?: number;
  readonly marker_MHz: number;
  readonly stale?: boolean;
  readonly waiting?: string;
  onMarker(frequency_MHz: number): void;
}

const first = [0.12, 0.88, 0.2, 0.8, 0.3, 0.7, 0.4, 0.6, 0.05, 0.95];

/** Curves of one quantity over frequency, with the band, its edges, a limit, and a marker that reads them. */
export const CurveChart = memo(function CurveChart(p: Props) {
  const { ref, width_px, text_px } = useChartSize();
  const clip = useId();
  const { curves, quantity, band, bandLabel, design_MHz, top = 3, limit } = p;
  const layout = useMemo(() => {
    const frequencies = curves.flatMap((c) =>
      [c.frequency_MHz[0], c.frequency_MHz.at(-1)].filter((f) => f !== undefined),
    );
    return bandLayout({
      width_px,
      text_px,
      quantity,
      top,
      from_MHz: Math.min(band.from_MHz, design_MHz, ...frequencies),
      to_MHz: Math.max(band.to_MHz, design_MHz, ...frequencies),
      values: curves.flatMap((c) => c.value),
    });
  }, [curves, width_px, text_px, quantity, top, band, design_MHz]);
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const sheet = useMemo(
    () => bandMarks({ layout, quantity, text_px, band, bandLabel, design_MHz }),
    [layout, quantity, text_px, band, bandLabel, design_MHz],
  );
  const drawn = useMemo(() => {
    const upright = (f: number) => ({ points: [[layout.x(f), plot.y] as const, [layout.x(f), foot] as const] });
    return drawTraces(
      curves.map((c) => ({ ...c, points: c.frequency_MHz.map((f, i) => layout.point(f, c.value[i]!)) })),
      {
        fixed: [band.from_MHz, band.to_MHz, design_MHz].map(upright),
        text_px,
        keepOut: sheet.keepOut,
        frame: { x: plot.x + 2, y: plot.y, width: plot.width - 4, height: plot.height },
        hub: [plot.x + plot.width / 2, foot + 4000],
        liveFirst: first,
        pinFirst: first,
      },
    );
  }, [curves, layout, text_px, sheet, plot, foot, band, design_MHz]);

  const marker_MHz = Math.min(
    layout.frequencyAt([layout.width, 0]),
    Math.max(layout.frequencyAt([0, 0]), p.marker_MHz),
  );
  const text = (value: number) =>
    quantity !== "swr" ? withUnit(figure(value, 1), "Ω") : value > 100 ? "over 100" : figure(value, 2);
  const readings = curves.map((c) => ({ ...c, reading: readCurve(c, marker_MHz) }));
  const where = `${megahertz(marker_MHz)} MHz`;
  const marker_x = layout.x(marker_MHz);
  return (
    <ChartFrame
      title={p.title}
      note={p.note}
      summary={`${p.title} over ${bandLabel}, ${megahertz(band.from_MHz)} to ${megahertz(band.to_MHz)} MHz. ${p.said}`}
      width_px={layout.width}
      height_px={layout.height}
      plotRef={ref}
      stale={p.stale ?? false}
      waiting={curves.length > 0 ? null : (p.waiting ?? "No curve yet.")}
      over={
        <MarkerPad
          label="Frequency to read, kHz"
          box={plot}
          value={Math.round(marker_MHz * 1000)}
          min={Math.ceil(layout.frequencyAt([0, 0]) * 1000)}
          max={Math.floor(layout.frequencyAt([layout.width, 0]) * 1000)}
          home={Math.round(band.from_MHz * 1000)}
          end={Math.round(band.to_MHz * 1000)}
          valueText={`${where}: ${readings.map((r) => `${r.name} ${text(r.reading)}`).join(", ")}`}
          valueAt={(spot) => layout.frequencyAt(spot) * 1000}
          onValue={(kHz) => p.onMarker(kHz / 1000)}
        />
      }
      below={<TraceKey where={`read at ${where}`} entries={readings.map((r) => ({ ...r, value: text(r.reading) }))} />}
      table={{
        caption: `${p.title} by frequency`,
        heads: ["MHz", ...curves.map((c) => c.name)],
        rows: () => tableRows(curves, text),
      }}
    >
      <BandGround
        layout={layout}
        clip={clip}
        band={band}
        design_MHz={design_MHz}
        limits={limit === undefined ? [] : [limit]}
      />
      <MarkText marks={sheet.marks} />
      <g clipPath={`url(#${clip})`}>
        {drawn.map((t) => (
          <path key={t.id} className={traceClass(t)} d={t.path} />
        ))}
      </g>
      <g clipPath={`url(#${clip})`}>
        {curves
          .filter((c) => c.isRead)
          .flatMap((c) =>
            c.frequency_MHz.map((f, i) => (
              <path
                key={`${c.id} ${f}`}
                className={`tr-mark tr-mark-${c.role}`}
                d={markPath(c, layout.point(f, c.value[i]!))}
              />
            )),
          )}
      </g>
      <path className="tr-marker" d={`M${marker_x.toFixed(1)},${foot}V${plot.y}`} />
      <TraceLabels drawn={drawn} />
      <g clipPath={`url(#${clip})`}>
        {readings.map(
          (r) =>
            Number.isFinite(r.reading) && (
              <path
                key={r.id}
                className={`tr-mark tr-mark-${r.role}`}
                d={markPath(r, layout.point(marker_MHz, r.reading))}
              />
            ),
        )}
      </g>
      <circle className="tr-grip" cx={marker_x.toFixed(1)} cy={plot.y} r={6} />
    </ChartFrame>
  );
});

/** Every fourth point or so: the curves are drawn from more than anyone reads. */
function tableRows(curves: readonly Curve[], text: (value: number) => string): string[][] {
  const all = curves[0]?.frequency_MHz ?? [];
  const step = Math.max(1, Math.floor((all.length - 1) / 24));
  return all.filter((_, i) => i % step === 0).map((f) => [megahertz(f), ...curves.map((c) => text(readCurve(c, f)))]);
}
