import { oncePer } from "../oncePer.ts";
import type { Spot } from "./tracePath.ts";

/** No point that is left out lies farther than this from the line drawn without it. */
export const leftOut_px = 0.1;
/** A piece of line is not drawn longer than this in place of several, which bounds the search. */
const longest_px = 12;

/**
 * The points that a line needs to look the same: where several lie within a tenth of a pixel of a straight piece, its
 * ends are enough. Ends and gaps (points that are not finite) stay. A cut has a point for each degree, closer together
 * on the screen than pixels are; in a drag all of them are written, read and drawn in every frame.
 */
export const fewerPoints: (points: readonly Spot[]) => readonly Spot[] = oncePer(leaveOut);

function leaveOut(points: readonly Spot[]): readonly Spot[] {
  const kept: Spot[] = [];
  let from = -1;
  for (let i = 0; i < points.length; i++) {
    if (from < 0 || i + 1 === points.length || !canLeaveOut(points, from, i + 1)) {
      kept.push(points[i]!);
      from = i;
    }
  }
  return kept;
}

/** Whether everything between two points lies on the straight line between them, as far as anyone can see. */
function canLeaveOut(points: readonly Spot[], from: number, to: number): boolean {
  const [x, y] = points[from]!;
  const dx = points[to]![0] - x;
  const dy = points[to]![1] - y;
  const length = Math.sqrt(dx * dx + dy * dy);
  // Not finite at either end, too: no comparison with NaN is true.
  if (!(length <= longest_px)) return false;
  for (let i = from + 1; i < to; i++) {
    const ex = points[i]![0] - x;
    const ey = points[i]![1] - y;
    const along = length > 0 ? (ex * dx + ey * dy) / length : 0;
    const across = length > 0 ? (ex * dy - ey * dx) / length : Math.sqrt(ex * ex + ey * ey);
    if (!(Math.abs(across) <= leftOut_px && along >= -leftOut_px && along <= length + leftOut_px)) return false;
  }
  return true;
}
