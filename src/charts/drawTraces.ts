import type { DrawnTrace } from "./DrawnTrace.ts";
import { lineAnchors } from "./lineAnchors.ts";
import { type Box, type LabelLine, placeLabels } from "./placeLabels.ts";
import { textWidth_px } from "./textWidth.ts";
import { thinned } from "./thinned.ts";
import { type Spot, tracePath } from "./tracePath.ts";

export type PointedTrace = Pick<DrawnTrace, "id" | "name" | "role" | "style" | "points">;

interface Setting {
  readonly text_px: number;
  readonly frame: Box;
  readonly keepOut: readonly Box[];
  /** Lines that are no traces and that names keep off as well. */
  readonly fixed?: readonly LabelLine[];
  /** Labels step away from here first. */
  readonly hub: Spot;
  /** Where along a line (0 its first point .. 1 its last) a name is tried, in order. */
  readonly liveFirst: readonly number[];
  readonly pinFirst: readonly number[];
}

/** Paths and name places for the lines of a chart, pins first, so that the live design is drawn over them. */
export function drawTraces(traces: readonly PointedTrace[], s: Setting): DrawnTrace[] {
  const chosen = traces.toSorted((a, b) => rank(a) - rank(b));
  const places = placeLabels({
    labels: chosen.map((t) => ({
      id: t.id,
      width: textWidth_px(t.name, s.text_px),
      height: s.text_px * 1.2,
      isNeeded: t.role === "live",
      anchors: lineAnchors(t.points, s.hub, t.role === "live" ? s.liveFirst : turned(s.pinFirst, t.style * 2)),
    })),
    lines: [...traces.map((t) => ({ of: t.id, points: thinned(t.points, 120) })), ...(s.fixed ?? [])],
    keepOut: s.keepOut,
    frame: s.frame,
  });
  return chosen.reverse().map((t) => ({ ...t, path: tracePath(t.points), label: places.get(t.id) ?? null }));
}

/** The live design chooses its place first, then pins in their order. */
const rank = (t: PointedTrace) => (t.role === "live" ? 0 : 1 + t.style);

/** So that pins that lie close together do not all want the same place. */
const turned = (list: readonly number[], by: number) => [...list.slice(by), ...list.slice(0, by)];
