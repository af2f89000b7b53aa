import { line } from "d3-shape";
import { oncePer } from "../oncePer.ts";
import { fewerPoints } from "./fewerPoints.ts";

/** A point in px; NaN in either place breaks the line there. */
export type Spot = readonly [x: number, y: number];

const isWhole = ([x, y]: Spot) => Number.isFinite(x) && Number.isFinite(y);
// A tenth of a pixel is below what a screen shows and keeps the strings short enough to rebuild every frame.
const draw = line<Spot>(
  (p) => p[0],
  (p) => p[1],
)
  .defined(isWhole)
  .digits(1);

/**
 * The SVG path through points, in px to one decimal, with a gap wherever a point is not finite. Points that the line
 * does not need are left out. Worked out once for a list of points: those of pinned designs are the same in every frame
 * of a drag.
 */
export const tracePath: (points: readonly Spot[]) => string = oncePer(
  (points) => draw(fewerPoints(points) as Spot[]) ?? "",
);

/** The surface between each unbroken run of points and the way back given by `foot` (its ends, then closed). */
export function washPath(all: readonly Spot[], foot: (point: Spot) => Spot): string {
  const points = fewerPoints(all);
  const parts: string[] = [];
  for (let i = 0; i < points.length; i++) {
    if (!isWhole(points[i]!)) continue;
    const start = i;
    while (i + 1 < points.length && isWhole(points[i + 1]!)) i++;
    if (i === start) continue;
    const run = points.slice(start, i + 1);
    parts.push(`${draw([foot(run[0]!), ...run, foot(run.at(-1)!)] as Spot[])}Z`);
  }
  return parts.join("");
}
