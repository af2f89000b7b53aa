import { bearing_deg } from "./bearing.ts";
import type { CutForm } from "./elevationLayout.ts";
import { gainScale } from "./gainScale.ts";
import type { Box } from "./placeLabels.ts";
import { compassPoint } from "./polarPoint.ts";
import type { Spot } from "./tracePath.ts";

/** Where everything of an azimuth cut lies, in px. Bearings are true; a spot of the polar form has north straight up. */
export interface AzimuthLayout {
  readonly form: CutForm;
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly hub: Spot;
  /** Radius of the outer ring; height of the rectangular plot. */
  readonly reach: number;
  /** A point of the pattern by azimuth −180..180, counter-clockwise from the beam, as cuts count it. */
  point(azimuth_deg: number, gain_dBi: number): Spot;
  /** Bearing under a spot, 0..360; NaN too near the hub to say. */
  bearingAt(spot: Spot): number;
}

interface Asked {
  readonly width_px: number;
  readonly text_px: number;
  readonly outer_dBi: number;
  readonly heading_deg: number;
}

const widest_px = 165;
const tallest_px = 240;

/** A disc with room for bearings round it. */
export function azimuthPolar({ width_px, text_px, outer_dBi, heading_deg }: Asked): AzimuthLayout {
  const margin = 3.4 * text_px;
  const above = 1.9 * text_px;
  const reach = Math.max(40, Math.min((width_px - 2 * margin) / 2, widest_px));
  const hub: Spot = [width_px / 2, above + reach];
  const radius = gainScale(outer_dBi, reach);
  return {
    form: "polar",
    width: width_px,
    height: Math.ceil(2 * (above + reach)),
    plot: { x: hub[0] - reach - margin, y: 0, width: 2 * (reach + margin), height: 2 * (above + reach) },
    hub,
    reach,
    point: (a, g) => compassPoint(hub, heading_deg - a, radius(g)),
    bearingAt: ([x, y]) => {
      const dx = x - hub[0];
      const dy = y - hub[1];
      return dx * dx + dy * dy < 36 ? Number.NaN : bearing_deg(0, 90 + (Math.atan2(dy, dx) * 180) / Math.PI);
    },
  };
}

/** Gain upward over bearing: the beam in the middle, clockwise to the right, straight behind at both ends. */
export function azimuthRectangular({ width_px, text_px, outer_dBi, heading_deg }: Asked): AzimuthLayout {
  const left = 2.8 * text_px;
  const right = width_px - 1.6 * text_px;
  const above = 1.4 * text_px;
  const reach = Math.max(120, Math.min((right - left) * 0.5, tallest_px));
  const foot = above + reach;
  const rise = gainScale(outer_dBi, reach);
  const pxPerDegree = (right - left) / 360;
  return {
    form: "rectangular",
    width: width_px,
    height: Math.ceil(foot + 3.4 * text_px),
    plot: { x: left, y: above, width: right - left, height: reach },
    hub: [(left + right) / 2, foot],
    reach,
    point: (a, g) => [(left + right) / 2 - a * pxPerDegree, foot - rise(g)],
    bearingAt: ([x]) => {
      const clockwise = Math.min(180, Math.max(-180, (x - (left + right) / 2) / pxPerDegree));
      return bearing_deg(-clockwise, heading_deg);
    },
  };
}
