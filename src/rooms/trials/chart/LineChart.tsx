import { memo, useId, useMemo } from "react";
import { ChartFrame } from "../../../charts/ChartFrame.tsx";
import { drawTraces } from "../../../charts/drawTraces.ts";
import { figure, withUnit } from "../../../charts/figure.ts";
import { MarkerPad } from "../../../charts/MarkerPad.tsx";
import { MarkText } from "../../../charts/MarkText.tsx";
import { markPath } from "../../../charts/markPath.ts";
import { TraceKey } from "../../../charts/TraceKey.tsx";
import { TraceLabels } from "../../../charts/TraceLabels.tsx";
import { traceClass } from "../../../charts/traceClass.ts";
import { tracePath } from "../../../charts/tracePath.ts";
import { useChartSize } from "../../../charts/useChartSize.ts";
import { lineLayout } from "./lineLayout.ts";
import { lineMarks } from "./lineMarks.ts";
import { readLine } from "./readLine.ts";
import "./LineChart.css";

export interface Line {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  readonly style: number;
  /** One for each place of `x`; NaN is a gap. */
  readonly y: readonly number[];
}

export interface LineChartProps {
  readonly title: string;
  readonly note: string;
  /** A sentence on what the lines show, for who does not see them. */
  readonly said: string;
  /** Rising. */
  readonly x: readonly number[];
  readonly xName: string;
  readonly xText: (value: number) => string;
  readonly lines: readonly Line[];
  readonly unit: string;
  readonly decimals: number;
  readonly least?: number;
  readonly most?: number;
  /** Levels drawn strong. */
  readonly limits?: readonly number[];
  /** Stretches of x that are shaded. */
  readonly shaded?: readonly { readonly id: string; readonly from: number; readonly to: number }[];
  /** Places of x with a word to each. */
  readonly places?: readonly { readonly id: string; readonly at: number; readonly text: string }[];
  /** Between these lies what may be. */
  readonly ranges?: readonly {
    readonly id: string;
    readonly low: readonly number[];
    readonly high: readonly number[];
  }[];
  readonly marker: number;
  readonly markerName: string;
  /** Steps of the marker to one of x. */
  readonly perStep: number;
  readonly stale: boolean;
  readonly tall_px?: number;
  onMarker(value: number): void;
  /** The marker was let go. */
  onSettle?(): void;
}

/** One and the same empty list, so that nothing is laid out anew for another. */
const none: readonly never[] = [];
const first = [0.1, 0.9, 0.2, 0.8, 0.3, 0.7, 0.4, 0.6, 0.05, 0.95];

/** Lines of one quantity over any other, with a marker that reads them and can be moved. */
export const LineChart = memo(function LineChart(p: LineChartProps) {
  const { ref, width_px, text_px } = useChartSize();
  const clip = useId();
  const { x, lines, ranges = none, shaded = none, places = none, limits = none, least, most, tall_px = 150 } = p;
  const layout = useMemo(
    () =>
      lineLayout({
        width_px,
        text_px,
        from: x[0] ?? 0,
        to: x.at(-1) ?? 1,
        values: [...lines.flatMap((l) => l.y), ...ranges.flatMap((r) => [...r.low, ...r.high])],
        least,
        most,
        tall_px,
      }),
    [x, lines, ranges, width_px, text_px, least, most, tall_px],
  );
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const { xText, xName } = p;
  const sheet = useMemo(
    () => lineMarks({ layout, text_px, places, xName, xText }),
    [layout, text_px, places, xName, xText],
  );
  const drawn = useMemo(
    () =>
      drawTraces(
        lines.map((l) => ({ ...l, points: x.map((at, i) => layout.point(at, l.y[i]!)) })),
        {
          text_px,
          keepOut: sheet.keepOut,
          frame: { x: plot.x + 2, y: plot.y, width: plot.width - 4, height: plot.height },
          hub: [plot.x + plot.width / 2, foot + 4000],
          liveFirst: first,
          pinFirst: first.toReversed(),
        },
      ),
    [lines, x, layout, text_px, sheet, plot, foot],
  );
  const rangePaths = useMemo(
    () =>
      ranges.map((r) => ({
        id: r.id,
        d: tracePath([
          ...x.map((at, i) => layout.point(at, r.low[i]!)),
          ...x.map((at, i) => layout.point(at, r.high[i]!)).reverse(),
        ]),
      })),
    [ranges, x, layout],
  );

  const marker = Math.min(layout.to, Math.max(layout.from, p.marker));
  const isOnChart = Number.isFinite(p.marker) && marker === p.marker;
  const text = (value: number) => withUnit(figure(value, p.decimals), p.unit).trim();
  const readings = lines.map((l) => ({ ...l, reading: readLine(x, l.y, marker) }));
  const where = isOnChart ? `${p.markerName} ${xText(marker)}` : `${p.markerName} is off this chart`;
  const marker_x = layout.x(marker);
  return (
    <div className="lc">
      <ChartFrame
        title={p.title}
        note={p.note}
        summary={`${p.title} over ${xName}. ${p.said}`}
        width_px={layout.width}
        height_px={layout.height}
        plotRef={ref}
        stale={p.stale}
        waiting={lines.length > 0 && x.length > 0 ? null : "No curve yet."}
        over={
          <MarkerPad
            label={`${p.title}: ${p.markerName}`}
            box={plot}
            value={Math.round(marker * p.perStep)}
            min={Math.ceil(layout.from * p.perStep)}
            max={Math.floor(layout.to * p.perStep)}
            home={Math.ceil(layout.from * p.perStep)}
            end={Math.floor(layout.to * p.perStep)}
            valueText={`${where}: ${readings.map((r) => `${r.name} ${text(r.reading)}`).join(", ")}`}
            valueAt={([px]) => layout.xAt(px) * p.perStep}
            onValue={(steps) => p.onMarker(steps / p.perStep)}
            onSettle={() => p.onSettle?.()}
          />
        }
        below={<TraceKey where={where} entries={readings.map((r) => ({ ...r, value: text(r.reading) }))} />}
        table={{
          caption: `${p.title} by ${xName}`,
          heads: [xName, ...lines.map((l) => l.name)],
          rows: () => tableRows(p, text),
        }}
      >
        <clipPath id={clip}>
          <rect x={plot.x} y={plot.y - 2} width={plot.width} height={plot.height + 4} />
        </clipPath>
        <g clipPath={`url(#${clip})`}>
          {shaded.map((s) => (
            <rect
              key={s.id}
              className="bc-band"
              x={layout.x(s.from)}
              y={plot.y}
              width={Math.max(0, layout.x(s.to) - layout.x(s.from))}
              height={plot.height}
            />
          ))}
          {rangePaths.map((r) => (
            <path key={r.id} className="tr-wash" d={`${r.d}Z`} />
          ))}
        </g>
        {layout.yTicks.map((v) => (
          <path
            key={v}
            className={`tr-grid${limits.includes(v) || v === 0 ? " bc-limit" : ""}`}
            d={`M${plot.x.toFixed(1)},${layout.y(v).toFixed(1)}h${plot.width.toFixed(1)}`}
          />
        ))}
        <g clipPath={`url(#${clip})`}>
          {limits
            .filter((v) => !layout.yTicks.includes(v))
            .map((v) => (
              <path key={v} className="tr-grid bc-limit" d={`M${plot.x},${layout.y(v).toFixed(1)}h${plot.width}`} />
            ))}
          {places.map((one) => (
            <path key={one.id} className="bc-edge" d={`M${layout.x(one.at).toFixed(1)},${plot.y}V${foot}`} />
          ))}
        </g>
        <path className="tr-axis" d={`M${plot.x},${foot}h${plot.width}`} />
        <MarkText marks={sheet.marks} />
        <g clipPath={`url(#${clip})`}>
          {drawn.map((t) => (
            <path key={t.id} className={traceClass(t)} d={t.path} />
          ))}
        </g>
        {isOnChart && <path className="tr-marker" d={`M${marker_x.toFixed(1)},${foot}V${plot.y}`} />}
        <TraceLabels drawn={drawn} />
        {isOnChart && (
          <>
            <g clipPath={`url(#${clip})`}>
              {readings.map(
                (r) =>
                  Number.isFinite(r.reading) && (
                    <path
                      key={r.id}
                      className={`tr-mark tr-mark-${r.role}`}
                      d={markPath(r, layout.point(marker, r.reading))}
                    />
                  ),
              )}
            </g>
            <circle className="tr-grip" cx={marker_x.toFixed(1)} cy={plot.y} r={6} />
          </>
        )}
      </ChartFrame>
    </div>
  );
});

/** Some thirty rows: the lines are drawn from more than anyone reads. */
function tableRows({ x, lines, xText }: LineChartProps, text: (value: number) => string): string[][] {
  const step = Math.max(1, Math.floor((x.length - 1) / 30));
  return x.flatMap((at, i) => (i % step === 0 ? [[xText(at), ...lines.map((l) => text(l.y[i]!))]] : []));
}
