import type { Anchor } from "./placeLabels.ts";
import type { Spot } from "./tracePath.ts";

/**
 * Places beside a line for its label: at each of the given fractions 0..1 of its points, first to the side that leads
 * away from `hub`, then to the other. Gaps give no anchor.
 */
export function lineAnchors(points: readonly Spot[], hub: Spot, fractions: readonly number[]): Anchor[] {
  const outer: Anchor[] = [];
  const inner: Anchor[] = [];
  const last = points.length - 1;
  for (const f of fractions) {
    const i = Math.round(f * last);
    const at = points[i];
    const before = points[Math.max(0, i - 2)];
    const after = points[Math.min(last, i + 2)];
    if (!at || !before || !after) continue;
    const dx = after[0] - before[0];
    const dy = after[1] - before[1];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (!(length > 0) || !Number.isFinite(at[0] + at[1])) continue;
    const facing = (at[0] - hub[0]) * dy - (at[1] - hub[1]) * dx >= 0 ? 1 : -1;
    const away: Spot = [(facing * dy) / length, (-facing * dx) / length];
    outer.push({ at, away });
    inner.push({ at, away: [-away[0], -away[1]] });
  }
  return [...outer, ...inner];
}
