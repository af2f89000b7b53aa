import { memo, useId, useMemo } from "react";
import type { PlanReadout } from "../../engine/index.ts";
import { azimuthPolar, azimuthRectangular } from "./azimuthLayout.ts";
import { azimuth_deg, bearing_deg, bearingText } from "./bearing.ts";
import { ChartFrame } from "./ChartFrame.tsx";
import { azimuthSummary } from "./cutSummary.ts";
import type { DesignTrace } from "./DesignTrace.ts";
import type { CutForm } from "./elevationLayout.ts";
import { figure, withUnit } from "./figure.ts";
import { MarkerPad } from "./MarkerPad.tsx";
import { RearHatch } from "./RearHatch.tsx";
import { readCut } from "./readCut.ts";
import { rearWords } from "./rearWords.ts";
import { TraceKey } from "./TraceKey.tsx";
import { useAzimuthPicture } from "./useAzimuthPicture.tsx";
import { useChartSize } from "./useChartSize.ts";
import { worstBehind } from "./worstBehind.ts";
import "./AzimuthCut.css";

export interface AzimuthCutProps {
  /** The live design and up to four pins. */
  readonly traces: readonly DesignTrace[];
  /** The same with the answers whose figures are printed: in a drag those of a moment ago. Absent: `traces`. */
  readonly printed?: readonly DesignTrace[];
  /** True bearing of the beam. */
  readonly heading_deg: number;
  /** Elevation the cuts were taken at. */
  readonly elevation_deg: number;
  readonly rearSector_deg: number;
  readonly form: CutForm;
  readonly outer_dBi: number;
  /** True bearing the marker stands at, 0..359. */
  readonly marker_deg: number;
  readonly stale: boolean;
  onMarker(bearing_deg: number): void;
}

/** Gain by compass bearing at one elevation, north up. */
export const AzimuthCut = memo(function AzimuthCut(p: AzimuthCutProps) {
  const { ref, width_px, text_px } = useChartSize();
  const hatch = useId();
  const { form, outer_dBi, heading_deg, rearSector_deg } = p;
  const layout = useMemo(() => {
    const asked = { width_px, text_px, outer_dBi, heading_deg };
    return form === "polar" ? azimuthPolar(asked) : azimuthRectangular(asked);
  }, [width_px, text_px, outer_dBi, heading_deg, form]);

  const azimuth = azimuth_deg(p.marker_deg, heading_deg);
  const printed = p.printed ?? p.traces;
  const readings = printed.map((t) => ({
    ...t,
    gain_dBi: t.readout ? readCut(t.readout.azimuthCut, azimuth) : Number.NaN,
  }));
  const where = bearingText(p.marker_deg);
  const said = readings.map((r) => `${r.name} ${figure(r.gain_dBi, 1)} dBi`).join(", ");
  const worst = useWorst(liveOf(p.traces), rearSector_deg);
  const picture = useAzimuthPicture({ ...p, layout, text_px, worst, hatch });
  const live = liveOf(printed);
  const rear = rearWords(live, useWorst(live, rearSector_deg), rearSector_deg, heading_deg);

  return (
    <ChartFrame
      title={`Azimuth cut at ${p.elevation_deg}° elevation`}
      note={form === "polar" ? "gain in dBi, true north up" : "gain in dBi, clockwise to the right"}
      summary={`${azimuthSummary(printed, p.elevation_deg, heading_deg)} ${rear}`}
      width_px={layout.width}
      height_px={layout.height}
      plotRef={ref}
      stale={p.stale}
      waiting={p.traces.some((t) => t.readout) ? null : "No pattern yet."}
      over={
        <MarkerPad
          label="Bearing to read"
          box={layout.plot}
          value={p.marker_deg}
          min={0}
          max={359}
          wraps
          home={Math.round(heading_deg) % 360}
          end={Math.round(bearing_deg(180, heading_deg)) % 360}
          valueText={`${where}: ${said}`}
          valueAt={layout.bearingAt}
          onValue={p.onMarker}
        />
      }
      moving={picture.moving}
      below={
        <>
          <TraceKey
            where={`read toward ${where}`}
            entries={readings.map((r) => ({ ...r, value: withUnit(figure(r.gain_dBi, 1), "dBi") }))}
          />
          <p className="ac-rear-words">
            <svg className="ac-swatch" width="22" height="12" aria-hidden="true">
              <RearHatch id={`${hatch}k`} />
              <rect width="22" height="12" fill={`url(#${hatch}k)`} />
            </svg>
            {rear}
          </p>
        </>
      }
      table={{
        caption: `Gain in dBi by true bearing at ${p.elevation_deg}° elevation`,
        heads: ["bearing", ...p.traces.map((t) => t.name)],
        rows: () => bearingRows(p.traces, heading_deg),
      }}
    >
      {picture.still}
    </ChartFrame>
  );
});

const liveOf = (traces: readonly DesignTrace[]) => traces.find((t) => t.role === "live")?.readout ?? null;

function useWorst(live: PlanReadout | null, rearSector_deg: number) {
  return useMemo(() => (live ? worstBehind(live.azimuthCut, rearSector_deg) : []), [live, rearSector_deg]);
}

function bearingRows(traces: readonly DesignTrace[], heading_deg: number): string[][] {
  return Array.from({ length: 36 }, (_, i) => i * 10).map((b) => [
    bearingText(b),
    ...traces.map((t) =>
      figure(t.readout ? readCut(t.readout.azimuthCut, azimuth_deg(b, heading_deg)) : Number.NaN, 1),
    ),
  ]);
}
