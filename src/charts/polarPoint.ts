import type { Spot } from "./tracePath.ts";

/** A point in px from the hub of a polar plot; angle in degrees counter-clockwise from the right, y down the screen. */
export function polarPoint(hub: Spot, angle_deg: number, radius_px: number): Spot {
  const a = (angle_deg * Math.PI) / 180;
  return [hub[0] + radius_px * Math.cos(a), hub[1] - radius_px * Math.sin(a)];
}

/** As `polarPoint`, by compass bearing: clockwise from straight up. */
export function compassPoint(hub: Spot, bearing: number, radius_px: number): Spot {
  return polarPoint(hub, 90 - bearing, radius_px);
}
