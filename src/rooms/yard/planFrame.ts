import type { ElementPlan, Plan } from "../../../engine/index.ts";
import { drivenOf } from "../../../engine/index.ts";

export interface Point_px {
  readonly x: number;
  readonly y: number;
}

/**
 * How the view from above maps the ground to the sheet: true north up, one scale, the same for every heading.
 * The pivot is a point of the beam line; the drawing turns about it, so turning the beam never changes the scale.
 */
export interface PlanFrame {
  readonly width_px: number;
  readonly height_px: number;
  readonly centre: Point_px;
  readonly pxPerM: number;
  /** Where the beam's end and the compass ticks lie. */
  readonly ring_px: number;
  /** The ground under `centre`. */
  readonly pivotForward_m: number;
  readonly pivotLeft_m: number;
}

/** Room for the compass ring, its letters and the handle that rides on it. */
const outside_px = 34;
/** A lone thin wire without radials still has a yard around it. */
const leastRadius_m = 1;

/** Fits every element with its radials inside the compass ring. */
export function fitPlanFrame(plan: Plan, width_px: number, height_px: number): PlanFrame {
  const driven = drivenOf(plan);
  const left_m = driven?.left_m ?? 0;
  const ends = plan.elements.map((element) => [
    element.forward_m - reachOf(element),
    element.forward_m + reachOf(element),
  ]);
  const pivotForward_m = (Math.min(...ends.map((end) => end[0]!)) + Math.max(...ends.map((end) => end[1]!))) / 2;
  const radius_m = Math.max(
    leastRadius_m,
    ...plan.elements.map(
      (element) => Math.hypot(element.forward_m - pivotForward_m, element.left_m - left_m) + reachOf(element),
    ),
  );
  const ring_px = Math.max(40, Math.min(width_px, height_px) / 2 - outside_px);
  return {
    width_px,
    height_px,
    centre: { x: width_px / 2, y: height_px / 2 },
    // A little air between the outermost radial and the ring.
    pxPerM: (ring_px - 12) / radius_m,
    ring_px,
    pivotForward_m,
    pivotLeft_m: left_m,
  };
}

/** How far an element reaches over the ground. */
function reachOf(element: ElementPlan): number {
  return element.radials.count > 0 ? element.radials.length_m : 0;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A point given along and left of the beam, on the sheet. Bearings run clockwise from north, which is up. */
export function toSheet(frame: PlanFrame, heading_deg: number, forward_m: number, left_m: number): Point_px {
  const sin = Math.sin(radians(heading_deg));
  const cos = Math.cos(radians(heading_deg));
  const ahead = forward_m - frame.pivotForward_m;
  const left = left_m - frame.pivotLeft_m;
  // East and north of the pivot; the sheet's y runs down.
  return {
    x: frame.centre.x + (ahead * sin - left * cos) * frame.pxPerM,
    y: frame.centre.y - (ahead * cos + left * sin) * frame.pxPerM,
  };
}

/** The inverse of `toSheet`. */
export function toGround(
  frame: PlanFrame,
  heading_deg: number,
  point: Point_px,
): { readonly forward_m: number; readonly left_m: number } {
  const sin = Math.sin(radians(heading_deg));
  const cos = Math.cos(radians(heading_deg));
  const east = (point.x - frame.centre.x) / frame.pxPerM;
  const north = (frame.centre.y - point.y) / frame.pxPerM;
  return {
    forward_m: frame.pivotForward_m + east * sin + north * cos,
    left_m: frame.pivotLeft_m - east * cos + north * sin,
  };
}

/** A point on the compass ring, or `beyond_px` outside it, at a true bearing. */
export function onRing(frame: PlanFrame, bearing_deg: number, beyond_px = 0): Point_px {
  const radius = frame.ring_px + beyond_px;
  return {
    x: frame.centre.x + radius * Math.sin(radians(bearing_deg)),
    y: frame.centre.y - radius * Math.cos(radians(bearing_deg)),
  };
}

/** The true bearing, 0 to 360, in which a point of the sheet lies from the pivot; null on the pivot itself. */
export function bearingFromPivot(frame: PlanFrame, point: Point_px): number | null {
  const east = point.x - frame.centre.x;
  const north = frame.centre.y - point.y;
  if (Math.abs(east) < 1e-9 && Math.abs(north) < 1e-9) return null;
  return ((Math.atan2(east, north) * 180) / Math.PI + 360) % 360;
}
