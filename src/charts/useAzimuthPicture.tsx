import { useMemo } from "react";
import type { AzimuthCutProps } from "./AzimuthCut.tsx";
import type { AzimuthLayout } from "./azimuthLayout.ts";
import { azimuthMarks } from "./azimuthMarks.ts";
import { azimuth_deg } from "./bearing.ts";
import type { ChartPicture } from "./ChartPicture.ts";
import { cutPoints } from "./cutPoints.ts";
import { drawTraces } from "./drawTraces.ts";
import { MarkText } from "./MarkText.tsx";
import { markPath } from "./markPath.ts";
import { RearHatch } from "./RearHatch.tsx";
import { readCut } from "./readCut.ts";
import { SheetLines } from "./SheetLines.tsx";
import { TraceLabels } from "./TraceLabels.tsx";
import { TraceLines } from "./TraceLines.tsx";
import { type Spot, washPath } from "./tracePath.ts";
import type { LoudDirection } from "./worstBehind.ts";

interface AzimuthPicture extends Omit<AzimuthCutProps, "printed" | "elevation_deg" | "form" | "stale" | "onMarker"> {
  readonly layout: AzimuthLayout;
  readonly text_px: number;
  /** The loudest directions behind: one, or one to either side. */
  readonly worst: readonly LoudDirection[];
  /** Id for the hatching. */
  readonly hatch: string;
}

/** Where along a cut (0 and 1 behind, 0.5 along the beam) a name is tried. */
const liveFirst = [0.42, 0.58, 0.36, 0.64, 0.3, 0.7, 0.47, 0.53, 0.24, 0.76, 0.15, 0.85];
const pinFirst = [0.72, 0.28, 0.78, 0.22, 0.84, 0.16, 0.66, 0.34, 0.9, 0.1, 0.96, 0.04, 0.6, 0.4];

/**
 * The picture of an azimuth cut in two parts: rear sector, rings, beam and pins, which stay while something is dragged,
 * and over them live design, numbers, worst direction, names and marker.
 */
export function useAzimuthPicture(p: AzimuthPicture): ChartPicture {
  const { layout, text_px, traces, outer_dBi, heading_deg, rearSector_deg, worst } = p;
  const sheet = useMemo(
    () => azimuthMarks({ layout, outer_dBi, text_px, heading_deg, rearSector_deg }),
    [layout, outer_dBi, text_px, heading_deg, rearSector_deg],
  );
  const worstAt: readonly Spot[] = useMemo(
    () => worst.map((w) => layout.point(w.azimuth_deg, w.gain_dBi)),
    [worst, layout],
  );
  const drawn = useMemo(
    () =>
      drawTraces(
        traces.flatMap((t) => (t.readout ? [{ ...t, points: cutPoints(t.readout.azimuthCut, layout.point) }] : [])),
        {
          text_px,
          keepOut: [...sheet.keepOut, ...worstAt.map((w) => about(w, 8))],
          frame: { x: 2, y: 2, width: layout.width - 4, height: layout.height - 4 },
          hub: layout.hub,
          liveFirst,
          pinFirst,
        },
      ),
    [traces, layout, text_px, sheet, worstAt],
  );
  const live = drawn.find((t) => t.role === "live");
  const { hub } = layout;
  const isPolar = layout.form === "polar";
  const azimuth = azimuth_deg(p.marker_deg, heading_deg);
  const foot = layout.point(azimuth, outer_dBi - 1000);
  const end = layout.point(azimuth, outer_dBi);

  return {
    still: (
      <>
        <RearHatch id={p.hatch} />
        {sheet.rear.map((d) => (
          <path key={d} className="ac-rear" d={d} fill={`url(#${p.hatch})`} />
        ))}
        <SheetLines rules={sheet.rules} spokes={sheet.spokes} />
        <path className="ac-beam" d={sheet.beam} />
        <TraceLines drawn={drawn.filter((t) => t.role === "pin")} />
      </>
    ),
    moving: (
      <>
        {live && <path className="tr-wash" d={washPath(live.points, isPolar ? () => hub : ([x]) => [x, hub[1]])} />}
        <TraceLines drawn={live ? [live] : []} />
        <MarkText marks={sheet.marks} />
        <path
          className="tr-marker"
          d={`M${foot[0].toFixed(1)},${foot[1].toFixed(1)}L${end[0].toFixed(1)},${end[1].toFixed(1)}`}
        />
        {worstAt.map(([x, y], i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: one or two marks that only move
          <path key={i} className="ac-worst" d={`M${x.toFixed(1)},${y.toFixed(1)}m0,-6l6,10h-12Z`} />
        ))}
        <TraceLabels drawn={drawn} />
        {traces.toReversed().map((t) => {
          const gain = t.readout ? readCut(t.readout.azimuthCut, azimuth) : Number.NaN;
          if (!Number.isFinite(gain)) return null;
          return (
            <path key={t.id} className={`tr-mark tr-mark-${t.role}`} d={markPath(t, layout.point(azimuth, gain))} />
          );
        })}
        <circle className="tr-grip" cx={end[0]} cy={end[1]} r={6} />
      </>
    ),
  };
}

const about = ([x, y]: Spot, by: number) => ({ x: x - by, y: y - by, width: 2 * by, height: 2 * by });
