import { useMemo } from "react";
import type { ChartPicture } from "./ChartPicture.ts";
import { cutPoints } from "./cutPoints.ts";
import { drawTraces } from "./drawTraces.ts";
import type { ElevationCutProps } from "./ElevationCut.tsx";
import type { ElevationLayout } from "./elevationLayout.ts";
import { elevationMarks } from "./elevationMarks.ts";
import { fitMarks } from "./fitMarks.ts";
import { MarkText } from "./MarkText.tsx";
import { markPath } from "./markPath.ts";
import { mastLines } from "./mastLines.ts";
import { readCut } from "./readCut.ts";
import { SheetLines } from "./SheetLines.tsx";
import { TraceLabels } from "./TraceLabels.tsx";
import { TraceLines } from "./TraceLines.tsx";
import { washPath } from "./tracePath.ts";

interface ElevationPicture extends Omit<ElevationCutProps, "printed" | "stale" | "onMarker"> {
  readonly layout: ElevationLayout;
  readonly text_px: number;
}

/** Where along a cut (0 ahead .. 1 behind) a name is tried: the live one on the front lobe, pins on the back first. */
const liveFirst = [0.22, 0.17, 0.28, 0.12, 0.34, 0.4, 0.78, 0.72, 0.84, 0.66, 0.08, 0.9, 0.5];
const pinFirst = [0.8, 0.74, 0.86, 0.68, 0.91, 0.62, 0.56, 0.2, 0.26, 0.14, 0.32, 0.38, 0.44, 0.1];

/**
 * The picture of an elevation cut in two parts, from the ground up: path, rings and pins, which stay while something is
 * dragged, and over them masts, live design, numbers, names and marker.
 */
export function useElevationPicture(p: ElevationPicture): ChartPicture {
  const { layout, text_px, traces, form, stretched, outer_dBi, heading_deg, path } = p;
  const { hub, reach, ground_y, plot } = layout;
  const isPolar = form === "polar";
  const masts = useMemo(
    () => (isPolar ? mastLines(p.masts, hub, Math.min(30, reach * 0.16), reach * 0.3) : []),
    [p.masts, isPolar, hub, reach],
  );
  const sheet = useMemo(
    () => elevationMarks({ layout, form, stretched, outer_dBi, text_px, heading_deg, path }),
    [layout, form, stretched, outer_dBi, text_px, heading_deg, path],
  );
  const { marks, keepOut } = useMemo(() => {
    const taken = masts.map(({ tip, foot }) => ({
      x: tip[0] - 5,
      y: tip[1] - 5,
      width: 10,
      height: foot[1] - tip[1] + 5,
    }));
    return fitMarks(sheet.marks, text_px, layout.width, taken);
  }, [sheet, text_px, layout, masts]);
  const drawn = useMemo(
    () =>
      drawTraces(
        traces.flatMap((t) => (t.readout ? [{ ...t, points: cutPoints(t.readout.elevationCut, layout.point) }] : [])),
        {
          text_px,
          keepOut,
          frame: { x: 2, y: 2, width: layout.width - 4, height: layout.ground_y - 4 },
          hub: layout.hub,
          liveFirst,
          pinFirst,
        },
      ),
    [traces, layout, text_px, keepOut],
  );
  const live = drawn.find((t) => t.role === "live");
  const foot = layout.point(p.marker_deg, outer_dBi - 1000);
  const end = layout.point(p.marker_deg, outer_dBi);

  const axis_x = isPolar ? [hub[0] - reach - 2 * text_px, hub[0] + reach + 2 * text_px] : [plot.x, plot.x + plot.width];
  return {
    still: (
      <>
        {sheet.wedges.map((d, i) => (
          <path key={d} className="tr-path" d={d} opacity={i === 0 ? 1 : 0.5} />
        ))}
        <SheetLines rules={sheet.rules} spokes={sheet.spokes} />
        <path className="tr-axis" d={`M${axis_x[0]},${ground_y}H${axis_x[1]}`} />
        <TraceLines drawn={drawn.filter((t) => t.role === "pin")} />
      </>
    ),
    moving: (
      <>
        {masts.map((m) => (
          <g key={m.id}>
            <path className="ec-mast" d={`M${m.foot[0].toFixed(1)},${m.foot[1].toFixed(1)}V${m.tip[1].toFixed(1)}`} />
            <circle className={m.isFed ? "ec-tip" : "ec-tip-open"} cx={m.tip[0]} cy={m.tip[1]} r={3} />
          </g>
        ))}
        {live && <path className="tr-wash" d={washPath(live.points, isPolar ? () => hub : ([x]) => [x, ground_y])} />}
        <TraceLines drawn={live ? [live] : []} />
        <MarkText marks={marks} />
        <path
          className="tr-marker"
          d={`M${foot[0].toFixed(1)},${foot[1].toFixed(1)}L${end[0].toFixed(1)},${end[1].toFixed(1)}`}
        />
        <TraceLabels drawn={drawn} />
        {traces.toReversed().map((t) => {
          const gain = t.readout ? readCut(t.readout.elevationCut, p.marker_deg) : Number.NaN;
          if (!Number.isFinite(gain)) return null;
          return (
            <path
              key={t.id}
              className={`tr-mark tr-mark-${t.role}`}
              d={markPath(t, layout.point(p.marker_deg, gain))}
            />
          );
        })}
        <circle className="tr-grip" cx={end[0]} cy={end[1]} r={6} />
      </>
    ),
  };
}
