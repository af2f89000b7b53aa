import { contours } from "d3-contour";
import { scaleLinear } from "d3-scale";
import type { MapPicture } from "../../../../engine/index.ts";
import type { Box } from "../../../charts/placeLabels.ts";
import type { Spot } from "../../../charts/tracePath.ts";

export interface MapLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  /** Metres in the picture; ticks in the person's unit. */
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  x(spacing_m: number): number;
  y(height_m: number): number;
  /** A point of the drawing as spacing and length, within the map. */
  at(spot: Spot): { readonly spacing_m: number; readonly height_m: number };
}

interface Asked {
  readonly width_px: number;
  readonly text_px: number;
  readonly tall_px: number;
  readonly perMetre: number;
  readonly picture: MapPicture;
}

/** Spacing to the right, the reflector's length upward. */
export function mapLayout({ width_px, text_px, tall_px, perMetre, picture }: Asked): MapLayout {
  const { spacing_m, reflectorHeight_m } = picture;
  const left = 3.8 * text_px;
  const right = width_px - 1.2 * text_px;
  const top = 0.8 * text_px;
  const foot = top + tall_px;
  const x = scaleLinear([spacing_m[0]!, spacing_m.at(-1)!], [left, right]);
  const y = scaleLinear([reflectorHeight_m[0]!, reflectorHeight_m.at(-1)!], [foot, top]);
  const ticks = (list: readonly number[], count: number) =>
    scaleLinear([list[0]! * perMetre, list.at(-1)! * perMetre], [0, 1]).ticks(count);
  return {
    width: width_px,
    height: Math.ceil(foot + 3.3 * text_px),
    plot: { x: left, y: top, width: right - left, height: tall_px },
    xTicks: ticks(spacing_m, Math.max(2, Math.floor((right - left) / (5 * text_px)))),
    yTicks: ticks(reflectorHeight_m, Math.max(3, Math.floor(tall_px / (3 * text_px)))),
    x,
    y,
    at: ([px, py]) => ({
      spacing_m: x.invert(Math.max(left, Math.min(right, px))),
      height_m: y.invert(Math.max(top, Math.min(foot, py))),
    }),
  };
}

export interface Level {
  readonly value: number;
  /** Everything at or above `value`, as an SVG path. */
  readonly d: string;
  /** Its border, as runs of points that leave out the map's own edge. */
  readonly lines: readonly (readonly Spot[])[];
}

/** The levels of a figure over the map. */
export function mapLevels(
  values: readonly number[],
  thresholds: readonly number[],
  picture: MapPicture,
  layout: MapLayout,
): Level[] {
  const columns = picture.spacing_m.length;
  const rows = picture.reflectorHeight_m.length;
  const { plot } = layout;
  // The tracer puts the value of cell i at i + 1/2; the map's first and last values lie on its edges.
  const place = ([cx, cy]: readonly number[]): Spot => [
    plot.x + (clamp(cx! - 0.5, columns - 1) / (columns - 1)) * plot.width,
    plot.y + plot.height - (clamp(cy! - 0.5, rows - 1) / (rows - 1)) * plot.height,
  ];
  // Where a figure has no value it counts as lowest.
  const whole = values.map((v) => (Number.isFinite(v) ? v : -1e9));
  return contours()
    .size([columns, rows])
    .smooth(true)
    .thresholds([...thresholds])(whole)
    .map(({ value, coordinates }) => {
      const rings = coordinates.flatMap((polygon) => polygon.map((ring) => ring.map(place)));
      return {
        value,
        d: rings.map((ring) => `M${ring.map(([px, py]) => `${px.toFixed(1)},${py.toFixed(1)}`).join("L")}Z`).join(""),
        lines: rings.flatMap((ring) => openRuns(ring, plot)),
      };
    });
}

const clamp = (v: number, most: number) => Math.min(most, Math.max(0, v));

/** A ring without the stretches that run along the frame. */
function openRuns(ring: readonly Spot[], plot: Box): Spot[][] {
  const near = 0.3;
  const isOnEdge = ([px, py]: Spot) =>
    px < plot.x + near || px > plot.x + plot.width - near || py < plot.y + near || py > plot.y + plot.height - near;
  const runs: Spot[][] = [];
  let run: Spot[] = [];
  for (const [i, spot] of ring.entries()) {
    const before = ring[i - 1];
    if (before && isOnEdge(before) && isOnEdge(spot)) {
      if (run.length > 1) runs.push(run);
      run = [];
    }
    run.push(spot);
  }
  if (run.length > 1) runs.push(run);
  return runs;
}
