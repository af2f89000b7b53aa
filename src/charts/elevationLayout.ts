import type { ElevationMap } from "./elevationMap.ts";
import { gainScale } from "./gainScale.ts";
import type { Box } from "./placeLabels.ts";
import { polarPoint } from "./polarPoint.ts";
import { textWidth_px } from "./textWidth.ts";
import type { Spot } from "./tracePath.ts";

export type CutForm = "polar" | "rectangular";

/** Where everything of an elevation cut lies, in px. Elevations run 0 (horizon ahead, right) to 180 (behind, left). */
export interface ElevationLayout {
  readonly width: number;
  readonly height: number;
  /** Part of the drawing the marker lives in. */
  readonly plot: Box;
  /** Foot of the plot: the ground line. */
  readonly ground_y: number;
  /** Middle of the half circle; of the rectangular form, the foot of its zenith. */
  readonly hub: Spot;
  /** Radius of the outer ring; height of the rectangular plot. */
  readonly reach: number;
  point(elevation_deg: number, gain_dBi: number): Spot;
  /** Elevation under a spot, 0..180; NaN below ground or too near the hub to say. */
  elevationAt(spot: Spot): number;
}

interface Asked {
  readonly width_px: number;
  readonly text_px: number;
  readonly outer_dBi: number;
  readonly map: ElevationMap;
  /** Numbered beside the half circle. */
  readonly path_deg: number;
}

/** Taller than this a half circle pushes the ladder off a laptop's screen. */
const tallest_px = 270;

/** A half circle standing on the ground line, with room for angle numbers round it and a line of words below. */
export function elevationPolar({ width_px, text_px, outer_dBi, map, path_deg }: Asked): ElevationLayout {
  const side = Math.max(textWidth_px("30°", text_px), textWidth_px(`${path_deg}°`, text_px)) + 1.05 * text_px;
  const top = 1.7 * text_px;
  const reach = Math.max(40, Math.min((width_px - 2 * side) / 2, tallest_px));
  const hub: Spot = [width_px / 2, top + reach];
  const radius = gainScale(outer_dBi, reach);
  return {
    width: width_px,
    height: Math.ceil(hub[1] + 1.9 * text_px),
    plot: { x: hub[0] - reach - side, y: 0, width: 2 * (reach + side), height: hub[1] + 4 },
    ground_y: hub[1],
    hub,
    reach,
    point: (e, g) => polarPoint(hub, map.toScreen(e), radius(g)),
    elevationAt: ([x, y]) => {
      const dx = x - hub[0];
      const dy = hub[1] - y;
      if (dx * dx + dy * dy < 36) return Number.NaN;
      return map.toElevation(Math.min(180, Math.max(0, (Math.atan2(Math.max(0, dy), dx) * 180) / Math.PI)));
    },
  };
}

/** Gain upward over elevation: the horizon behind on the left, the zenith in the middle, the horizon ahead on the right. */
export function elevationRectangular({ width_px, text_px, outer_dBi, map }: Asked): ElevationLayout {
  const left = 2.8 * text_px;
  const right = width_px - 1.2 * text_px;
  const top = 1.2 * text_px;
  const reach = Math.max(120, Math.min((right - left) * 0.5, tallest_px));
  const ground_y = top + reach;
  const rise = gainScale(outer_dBi, reach);
  const half = (right - left) / 180;
  return {
    width: width_px,
    height: Math.ceil(ground_y + 3.4 * text_px),
    plot: { x: left, y: top, width: right - left, height: reach },
    ground_y,
    hub: [(left + right) / 2, ground_y],
    reach,
    point: (e, g) => [right - map.toScreen(e) * half, ground_y - rise(g)],
    elevationAt: ([x]) => map.toElevation(Math.min(180, Math.max(0, (right - x) / half))),
  };
}
