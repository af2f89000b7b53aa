import { memo, useId, useMemo } from "react";
import type { MapFigure, MapPicture } from "../../../../engine/index.ts";
import { ChartFrame } from "../../../charts/ChartFrame.tsx";
import { figure, withUnit } from "../../../charts/figure.ts";
import { fitMarks } from "../../../charts/fitMarks.ts";
import type { Mark } from "../../../charts/Mark.ts";
import { MarkText } from "../../../charts/MarkText.tsx";
import { markPath } from "../../../charts/markPath.ts";
import { type Spot, tracePath } from "../../../charts/tracePath.ts";
import { useChartSize } from "../../../charts/useChartSize.ts";
import type { Lengths } from "../useLengths.ts";
import { levelLabels } from "./levelLabels.ts";
import { MapKey } from "./MapKey.tsx";
import { MapPad } from "./MapPad.tsx";
import { mapFigures, mapThresholds } from "./mapFigures.ts";
import { type Level, mapLayout, mapLevels } from "./mapLayout.ts";
import { mapNames } from "./mapNames.ts";
import { mapTable } from "./mapTable.ts";
import { readMap } from "./readMap.ts";
import "./MapChart.css";

export interface MapPlace {
  readonly spacing_m: number;
  readonly height_m: number;
}

interface Props {
  readonly picture: MapPicture;
  readonly shown: MapFigure;
  readonly swrLimit: number;
  readonly mostSpacing_m: number | null;
  readonly mostHeight_m: number | null;
  /** Where the plan on screen stands; null: it has no reflector. */
  readonly here: MapPlace | null;
  /** Where the cursor is; null: where the plan is. */
  readonly cursor: MapPlace | null;
  readonly lengths: Lengths;
  readonly stale: boolean;
  onCursor(place: MapPlace): void;
  onGo(place: MapPlace): void;
}

/** Best places that have a mark, in the order their names find room. */
const named: readonly MapFigure[] = ["frontToBack", "forward", "frontToRear", "swr"];

/** One figure as a contour map over spacing and the reflector's length. */
export const MapChart = memo(function MapChart(p: Props) {
  const { ref, width_px, text_px } = useChartSize();
  const clip = useId();
  const hatch = useId();
  const { picture, shown, lengths, here, swrLimit, mostSpacing_m, mostHeight_m } = p;
  const about = mapFigures[shown];
  const values = about.values(picture.figures);
  const tall_px = Math.max(220, Math.min(430, width_px * 0.62));
  const { perMetre, onAxis, unit } = lengths;
  const layout = useMemo(
    () => mapLayout({ width_px, text_px, tall_px, perMetre, picture }),
    [width_px, text_px, tall_px, perMetre, picture],
  );
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const right = plot.x + plot.width;
  const levels = useMemo(() => {
    const found = mapLevels(values, mapThresholds(shown, values), picture, layout);
    return found.filter((level) => level.d !== "");
  }, [values, shown, picture, layout]);
  const swrLine = useMemo(
    () => mapLevels(picture.figures.swr50, [swrLimit], picture, layout)[0],
    [picture, swrLimit, layout],
  );
  const best = useMemo(
    () =>
      named.map((one, style) => {
        const mark = picture.best[one];
        const spot: Spot = [layout.x(mark.spacing_m), layout.y(mark.reflectorHeight_m)];
        return { id: one, style, mark, spot, name: mapFigures[one].best };
      }),
    [picture, layout],
  );
  const hereSpot = useMemo<Spot | null>(
    () => (here && isOn(picture, here) ? [layout.x(here.spacing_m), layout.y(here.height_m)] : null),
    [here, picture, layout],
  );
  const sheet = useMemo(() => {
    const marks: Mark[] = [
      ...layout.xTicks.map((v): Mark => {
        const x = layout.x(v / perMetre);
        return { id: `x${v}`, text: onAxis(v), x, y: foot + 0.95 * text_px, side: "middle", kind: "number" };
      }),
      ...layout.yTicks.map((v): Mark => {
        const y = layout.y(v / perMetre);
        return { id: `y${v}`, text: onAxis(v), x: plot.x - 0.5 * text_px, y, side: "end", kind: "number" };
      }),
      { id: "x", text: `spacing, ${unit}`, x: right, y: foot + 2.3 * text_px, side: "end", kind: "word" },
      {
        id: "y",
        text: `reflector length, ${unit}, upward`,
        x: 2,
        y: foot + 2.3 * text_px,
        side: "start",
        kind: "word",
      },
    ];
    return fitMarks(marks, text_px, layout.width);
  }, [layout, perMetre, onAxis, unit, text_px, foot, right, plot]);
  const names = useMemo(() => mapNames(best, hereSpot, text_px, plot), [best, hereSpot, text_px, plot]);
  const numbers = useMemo(
    () => levelLabels(levels, about.decimals, text_px, plot, [...names.values()]),
    [levels, about.decimals, text_px, plot, names],
  );

  const cursor = p.cursor ?? (here && isOn(picture, here) ? here : null);
  const said = (place: MapPlace) =>
    `${lengths.near(place.spacing_m)} apart, reflector ${lengths.near(place.height_m)}: ${named
      .map((one) => {
        const shownOne = mapFigures[one];
        const value = readMap(picture, shownOne.values(picture.figures), place);
        return `${shownOne.label.toLowerCase().replace("swr", "SWR")} ${withUnit(figure(value, shownOne.decimals), shownOne.unit).trim()}`;
      })
      .join(", ")}`;
  const top = picture.best[shown];
  const summary = `${about.label} over spacing and the reflector’s length. Best at ${said({ spacing_m: top.spacing_m, height_m: top.reflectorHeight_m })}.`;
  const cursorSpot: Spot | null = cursor && [layout.x(cursor.spacing_m), layout.y(cursor.height_m)];

  return (
    <div className="mc">
      <ChartFrame
        title={`${about.label} over spacing and reflector length`}
        note={`${about.unit === "" ? "to 50 Ω" : about.unit}, ${levelWords(levels)}`}
        summary={summary}
        width_px={layout.width}
        height_px={layout.height}
        plotRef={ref}
        stale={p.stale}
        waiting={null}
        over={
          <MapPad
            box={plot}
            layout={layout}
            picture={picture}
            cursor={cursor}
            said={cursor ? said(cursor) : "the plan is off this map"}
            onCursor={p.onCursor}
            onGo={p.onGo}
          />
        }
        below={
          <MapKey
            levels={levels}
            about={about}
            best={best}
            cursor={cursor ? said(cursor) : null}
            lengths={lengths}
            isBounded={mostSpacing_m !== null || mostHeight_m !== null}
          />
        }
        table={{
          caption: `${about.label}: reflector length down, spacing across`,
          ...mapTable(picture, values, about.decimals, lengths),
        }}
      >
        <clipPath id={clip}>
          <rect x={plot.x} y={plot.y} width={plot.width} height={plot.height} />
        </clipPath>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="mc-hatch" d="M0,0V7" />
        </pattern>
        <g clipPath={`url(#${clip})`}>
          <rect className="mc-ground" x={plot.x} y={plot.y} width={plot.width} height={plot.height} />
          {about.isLow && (
            <rect
              className="mc-level"
              style={tint(0, levels.length, true)}
              x={plot.x}
              y={plot.y}
              width={plot.width}
              height={plot.height}
            />
          )}
          {levels.map((level, i) => (
            <path key={level.value} className="mc-level" style={tint(i, levels.length, about.isLow)} d={level.d} />
          ))}
          {levels.map((level) =>
            level.lines.map((run) => (
              <path
                key={`${level.value} ${run[0]!.join(" ")}`}
                className={level.value === 0 ? "mc-line mc-zero" : "mc-line"}
                d={tracePath(run)}
              />
            )),
          )}
          {swrLine?.lines.map((run) => (
            <path key={run[0]!.join(" ")} className="mc-swr" d={tracePath(run)} />
          ))}
          {mostSpacing_m !== null && (
            <Beyond
              hatch={hatch}
              x={Math.max(plot.x, layout.x(mostSpacing_m))}
              y={plot.y}
              right={right}
              foot={foot}
              edge="left"
            />
          )}
          {mostHeight_m !== null && (
            <Beyond
              hatch={hatch}
              x={plot.x}
              y={plot.y}
              right={right}
              foot={Math.min(foot, layout.y(mostHeight_m))}
              edge="foot"
            />
          )}
        </g>
        <rect className="mc-frame" x={plot.x} y={plot.y} width={plot.width} height={plot.height} />
        <MarkText marks={sheet.marks} />
        {numbers.map((one) => (
          <text key={one.id} className="mc-number" x={one.x.toFixed(1)} y={one.y.toFixed(1)}>
            {one.text}
          </text>
        ))}
        {best.map((one) => (
          <path
            key={one.id}
            className="tr-mark tr-mark-pin"
            d={markPath({ role: "pin", style: one.style }, one.spot)}
          />
        ))}
        {best.map((one) => {
          const box = names.get(one.id);
          return (
            box && (
              <text key={one.id} className="tr-label tr-label-pin" x={box.x + box.width / 2} y={box.y + box.height / 2}>
                {one.name}
              </text>
            )
          );
        })}
        {hereSpot && <path className="tr-mark tr-mark-live" d={markPath({ role: "live", style: 0 }, hereSpot)} />}
        {hereSpot && names.get("here") && (
          <text
            className="tr-label tr-label-live"
            x={names.get("here")!.x + names.get("here")!.width / 2}
            y={names.get("here")!.y + names.get("here")!.height / 2}
          >
            this design
          </text>
        )}
        {p.cursor && cursorSpot && (
          <path className="mc-cursor" d={`M${cursorSpot[0]},${plot.y}V${foot}M${plot.x},${cursorSpot[1]}H${right}`} />
        )}
      </ChartFrame>
    </div>
  );
});

const isOn = ({ spacing_m, reflectorHeight_m }: MapPicture, place: MapPlace) =>
  place.spacing_m >= spacing_m[0]! &&
  place.spacing_m <= spacing_m.at(-1)! &&
  place.height_m >= reflectorHeight_m[0]! &&
  place.height_m <= reflectorHeight_m.at(-1)!;

/** The better, the fuller the colour: one hue from the sheet's own ground, so that light and dark alone tell. */
function tint(i: number, count: number, isLow: boolean) {
  const part = (i + 1) / (count + 1);
  return { fill: `color-mix(in oklab, var(--pin) ${Math.round(80 * (isLow ? 1 - part : part))}%, var(--sheet))` };
}

/** How far apart the lines are, where all are alike. */
function levelWords(levels: readonly Level[]): string {
  const steps = levels.slice(1).map((level, i) => Number((level.value - levels[i]!.value).toFixed(3)));
  const [first] = steps;
  const isEven = first !== undefined && steps.every((one) => Math.abs(one - first) < 1e-6);
  return isEven ? `a line every ${figure(first, first < 1 ? 2 : 0)}` : "each line with its value";
}

interface BeyondProps {
  readonly hatch: string;
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly foot: number;
  readonly edge: "left" | "foot";
}

/** What the garden does not allow. */
function Beyond({ hatch, x, y, right, foot, edge }: BeyondProps) {
  if (right <= x || foot <= y) return null;
  return (
    <>
      <rect x={x} y={y} width={right - x} height={foot - y} fill={`url(#${hatch})`} />
      <path className="mc-bound" d={edge === "left" ? `M${x},${y}V${foot}` : `M${x},${foot}H${right}`} />
    </>
  );
}
