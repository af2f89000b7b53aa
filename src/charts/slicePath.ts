import { polarPoint } from "./polarPoint.ts";
import type { Spot } from "./tracePath.ts";

const at = ([x, y]: Spot) => `${x.toFixed(1)},${y.toFixed(1)}`;

/** A slice of a disc from `from_deg` counter-clockwise to `to_deg` (angles from the right), less than a full turn. */
export function slicePath(hub: Spot, radius_px: number, from_deg: number, to_deg: number): string {
  const large = to_deg - from_deg > 180 ? 1 : 0;
  const r = radius_px.toFixed(1);
  return `M${at(hub)}L${at(polarPoint(hub, from_deg, radius_px))}A${r},${r},0,${large},0,${at(polarPoint(hub, to_deg, radius_px))}Z`;
}

/** A slice of a disc of full width `width_deg` centred on a compass bearing. */
export function compassSlice(hub: Spot, radius_px: number, bearing: number, width_deg: number): string {
  return slicePath(hub, radius_px, 90 - bearing - width_deg / 2, 90 - bearing + width_deg / 2);
}
