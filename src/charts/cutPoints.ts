import type { Cut } from "../../engine/index.ts";
import type { Spot } from "./tracePath.ts";

type Point = (angle: number, gain_dBi: number) => Spot;

/** The last points of each cut: a pinned design's stay while the live one is dragged. */
const known = new WeakMap<Cut, { readonly point: Point; readonly points: readonly Spot[] }>();

/**
 * A cut's samples as points of a drawing, in order; a gain that is not finite becomes a point that is not, a gap. The
 * same cut by the same `point` gives the same list.
 */
export function cutPoints(cut: Cut, point: Point): readonly Spot[] {
  const last = known.get(cut);
  if (last?.point === point) return last.points;
  const points = cut.angle_deg.map((angle, i) => point(angle, cut.gain_dBi[i]!));
  known.set(cut, { point, points });
  return points;
}
