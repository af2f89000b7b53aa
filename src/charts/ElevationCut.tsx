import { memo, useMemo } from "react";
import { bearing_deg, bearingText } from "./bearing.ts";
import { ChartFrame } from "./ChartFrame.tsx";
import { elevationSummary } from "./cutSummary.ts";
import type { DesignTrace } from "./DesignTrace.ts";
import { type CutForm, elevationPolar, elevationRectangular } from "./elevationLayout.ts";
import { elevationMap } from "./elevationMap.ts";
import { elevationWords } from "./elevationWords.ts";
import { figure, withUnit } from "./figure.ts";
import { MarkerPad } from "./MarkerPad.tsx";
import type { Mast } from "./mastLines.ts";
import type { PathBand } from "./PathBand.ts";
import { readCut } from "./readCut.ts";
import { TraceKey } from "./TraceKey.tsx";
import { useChartSize } from "./useChartSize.ts";
import { useElevationPicture } from "./useElevationPicture.tsx";
import "./ElevationCut.css";

export interface ElevationCutProps {
  /** The live design and up to four pins. */
  readonly traces: readonly DesignTrace[];
  /** The same with the answers whose figures are printed: in a drag those of a moment ago. Absent: `traces`. */
  readonly printed?: readonly DesignTrace[];
  readonly masts: readonly Mast[];
  readonly heading_deg: number;
  readonly path: PathBand;
  readonly form: CutForm;
  /** Low angles given more room. */
  readonly stretched: boolean;
  /** Gain of the outer ring; hold it still to compare. */
  readonly outer_dBi: number;
  /** Elevation the marker stands at, 0 (horizon ahead) .. 180 (behind). */
  readonly marker_deg: number;
  readonly stale: boolean;
  onMarker(elevation_deg: number): void;
}

/** Gain in the vertical plane through the beam: the horizon as the ground, ahead to the right. */
export const ElevationCut = memo(function ElevationCut(p: ElevationCutProps) {
  const { ref, width_px, text_px } = useChartSize();
  const { form, stretched, outer_dBi } = p;
  const path_deg = p.path.elevation_deg;
  const layout = useMemo(() => {
    const asked = { width_px, text_px, outer_dBi, map: elevationMap(stretched), path_deg };
    return form === "polar" ? elevationPolar(asked) : elevationRectangular(asked);
  }, [width_px, text_px, outer_dBi, stretched, form, path_deg]);

  const picture = useElevationPicture({ ...p, layout, text_px });

  const printed = p.printed ?? p.traces;
  const readings = printed.map((t) => ({
    ...t,
    gain_dBi: t.readout ? readCut(t.readout.elevationCut, p.marker_deg) : Number.NaN,
  }));
  const where = elevationWords(p.marker_deg);
  const said = readings.map((r) => `${r.name} ${figure(r.gain_dBi, 1)} dBi`).join(", ");
  const isEmpty = !p.traces.some((t) => t.readout);

  return (
    <ChartFrame
      title={`Elevation cut toward ${bearingText(p.heading_deg)}`}
      note={stretched ? "gain in dBi, low angles stretched" : "gain in dBi, true angles"}
      summary={elevationSummary(printed, p.path.elevation_deg, p.heading_deg)}
      width_px={layout.width}
      height_px={layout.height}
      plotRef={ref}
      stale={p.stale}
      waiting={isEmpty ? "No pattern yet." : null}
      over={
        <MarkerPad
          label="Elevation to read"
          box={layout.plot}
          // Counted from the left, so that the right arrow moves the marker to the right.
          value={180 - p.marker_deg}
          min={0}
          max={180}
          home={0}
          end={180}
          up={p.marker_deg < 90 ? -1 : 1}
          valueText={`${where}: ${said}`}
          valueAt={(spot) => 180 - layout.elevationAt(spot)}
          onValue={(v) => p.onMarker(180 - v)}
        />
      }
      moving={picture.moving}
      below={
        <TraceKey
          where={`read at ${where}`}
          entries={readings.map((r) => ({ ...r, value: withUnit(figure(r.gain_dBi, 1), "dBi") }))}
        />
      }
      table={{
        caption: `Gain in dBi through the beam, ahead toward ${bearingText(p.heading_deg)}, behind toward ${bearingText(bearing_deg(180, p.heading_deg))}`,
        heads: ["elevation", ...p.traces.map((t) => t.name)],
        rows: () => elevationRows(p.traces),
      }}
    >
      {picture.still}
    </ChartFrame>
  );
});

const tabled_deg = [0, 1, 2, 3, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90];

function elevationRows(traces: readonly DesignTrace[]): string[][] {
  const all = [
    ...tabled_deg,
    ...tabled_deg
      .slice(0, -1)
      .map((e) => 180 - e)
      .reverse(),
  ];
  return all.map((e) => [
    elevationWords(e),
    ...traces.map((t) => figure(t.readout ? readCut(t.readout.elevationCut, e) : Number.NaN, 1)),
  ]);
}
