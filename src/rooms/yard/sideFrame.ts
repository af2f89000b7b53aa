import type { ElementPlan, Plan } from "../../../engine/index.ts";
import type { Point_px } from "./planFrame.ts";

/** How the view from the side maps the beam's vertical plane to the sheet: forward to the right, up is up, one scale. */
export interface SideFrame {
  readonly width_px: number;
  readonly height_px: number;
  /** Sheet x of forward = 0. */
  readonly originX_px: number;
  /** Sheet y of the soil. */
  readonly groundY_px: number;
  readonly pxPerM: number;
}

const margin_px = { left: 28, right: 28, top: 24, bottom: 38 } as const;

/** Foot of an element above the soil: raised radials raise it; buried ones leave it at the surface. */
export function footOf(element: ElementPlan): number {
  return Math.max(0, element.radials.height_m);
}

/** Fits masts and radial fields into the sheet, standing on one ground line near its foot. */
export function fitSideFrame(plan: Plan, width_px: number, height_px: number): SideFrame {
  const reach = (element: ElementPlan) => (element.radials.count > 0 ? element.radials.length_m : 0);
  const from_m = Math.min(...plan.elements.map((element) => element.forward_m - reach(element)));
  const to_m = Math.max(...plan.elements.map((element) => element.forward_m + reach(element)));
  const top_m = Math.max(0.1, ...plan.elements.map((element) => footOf(element) + element.height_m));
  const across_px = Math.max(40, width_px - margin_px.left - margin_px.right);
  const up_px = Math.max(40, height_px - margin_px.top - margin_px.bottom);
  const pxPerM = Math.min(up_px / top_m, across_px / Math.max(to_m - from_m, 0.1));
  return {
    width_px,
    height_px,
    originX_px: width_px / 2 - ((from_m + to_m) / 2) * pxPerM,
    groundY_px: height_px - margin_px.bottom,
    pxPerM,
  };
}

export function toSideSheet(frame: SideFrame, forward_m: number, up_m: number): Point_px {
  return { x: frame.originX_px + forward_m * frame.pxPerM, y: frame.groundY_px - up_m * frame.pxPerM };
}

export function heightAt(frame: SideFrame, y_px: number): number {
  return (frame.groundY_px - y_px) / frame.pxPerM;
}
