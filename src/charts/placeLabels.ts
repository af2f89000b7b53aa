import type { Spot } from "./tracePath.ts";

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A place a label may stand beside: a point of its own line, and the unit direction to step away in. */
export interface Anchor {
  readonly at: Spot;
  readonly away: Spot;
}

export interface LabelRequest {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** Tried in this order, so that a label keeps its place while it can. */
  readonly anchors: readonly Anchor[];
  /** Better close to another line, or over one without a name, than not at all. */
  readonly isNeeded?: boolean;
}

export interface LabelLine {
  /** Id of the label that names this line; absent for a line without a name, which only must not be touched. */
  readonly of?: string;
  /** Points that are not finite are gaps. */
  readonly points: readonly Spot[];
}

export interface LabelScene {
  readonly labels: readonly LabelRequest[];
  /** No label may touch any of these, and each stands nearer to its own than to another's. */
  readonly lines: readonly LabelLine[];
  readonly keepOut: readonly Box[];
  readonly frame: Box;
}

/** Distances in px, by attempt: from the label to its own line, the least to it and to nameless lines, and the least to
 * any other named line. */
const attempts = [
  { step: 5, own: 3, other: 10 },
  { step: 9, own: 4, other: 14 },
  { step: 14, own: 5, other: 19 },
  { step: 4, own: 2, other: 7 },
] as const;
const lastResort = { step: 4, own: 2, other: 2 } as const;

/**
 * Puts each label beside its line where it touches no line, no other label, nothing kept out, and stays in the frame.
 * First come, first served; a label for which no place is free gets none, and the key below the chart still names it.
 * @returns a box for each label that found a place, by id
 */
export function placeLabels(scene: LabelScene): ReadonlyMap<string, Box> {
  const placed = new Map<string, Box>();
  const taken: Box[] = [...scene.keepOut];
  for (const label of scene.labels) {
    const box = firstFree(label, scene, taken);
    if (!box) continue;
    placed.set(label.id, box);
    taken.push(box);
  }
  return placed;
}

function firstFree(label: LabelRequest, scene: LabelScene, taken: readonly Box[]): Box | null {
  for (const attempt of label.isNeeded ? [...attempts, lastResort] : attempts) {
    const { step, own, other } = attempt;
    const lines = attempt === lastResort ? scene.lines.filter((l) => l.of !== undefined) : scene.lines;
    for (const { at, away } of label.anchors) {
      if (!Number.isFinite(at[0] + at[1] + away[0] + away[1])) continue;
      const reach = step + (Math.abs(away[0]) * label.width + Math.abs(away[1]) * label.height) / 2;
      const box: Box = {
        x: at[0] + away[0] * reach - label.width / 2,
        y: at[1] + away[1] * reach - label.height / 2,
        width: label.width,
        height: label.height,
      };
      if (!isInside(box, scene.frame) || taken.some((t) => boxesTouch(grown(box, 2), t))) continue;
      const near = grown(box, own);
      const wide = grown(box, other);
      if (!lines.some((l) => lineTouches(l.points, l.of === undefined || l.of === label.id ? near : wide))) return box;
    }
  }
  return null;
}

const grown = (b: Box, by: number): Box => ({
  x: b.x - by,
  y: b.y - by,
  width: b.width + 2 * by,
  height: b.height + 2 * by,
});

const isInside = (b: Box, f: Box) =>
  b.x >= f.x && b.y >= f.y && b.x + b.width <= f.x + f.width && b.y + b.height <= f.y + f.height;

/** Whether two boxes share area. */
export function boxesTouch(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function lineTouches(points: readonly Spot[], box: Box): boolean {
  for (let i = 1; i < points.length; i++) if (segmentTouches(points[i - 1]!, points[i]!, box)) return true;
  return false;
}

/** Whether the segment p→q passes through the box: clips it to the box side by side; what is left is inside. */
export function segmentTouches(p: Spot, q: Spot, b: Box): boolean {
  const right = b.x + b.width;
  const bottom = b.y + b.height;
  // Most segments lie wholly to one side; these four tests settle them without a division.
  if ((p[0] < b.x && q[0] < b.x) || (p[0] > right && q[0] > right)) return false;
  if ((p[1] < b.y && q[1] < b.y) || (p[1] > bottom && q[1] > bottom)) return false;
  if (!Number.isFinite(p[0] + p[1] + q[0] + q[1])) return false;
  let from = 0;
  let to = 1;
  const dx = q[0] - p[0];
  const dy = q[1] - p[1];
  for (const [slope, room] of [
    [-dx, p[0] - b.x],
    [dx, right - p[0]],
    [-dy, p[1] - b.y],
    [dy, bottom - p[1]],
  ] as const) {
    if (slope === 0) {
      if (room < 0) return false;
    } else if (slope < 0) from = Math.max(from, room / slope);
    else to = Math.min(to, room / slope);
  }
  return from <= to;
}
