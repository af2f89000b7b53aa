import type { Point_px } from "./planFrame.ts";

export interface Box_px {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Side = "right" | "left" | "above" | "below" | "above-right" | "above-left" | "below-right" | "below-left";

export interface LabelWish {
  readonly id: string;
  readonly text: string;
  /** What the label names. */
  readonly anchor: Point_px;
  /** How far the text must stay from the anchor. */
  readonly gap_px: number;
  /** Sides in order of liking; the others follow. */
  readonly prefer?: readonly Side[];
}

export interface PlacedLabel {
  readonly id: string;
  readonly text: string;
  readonly box: Box_px;
  readonly textAnchor: "start" | "middle" | "end";
  /** Where the text is set: its end named by `textAnchor`, on the base line. */
  readonly x: number;
  readonly baseline: number;
  /** The label had to go so far away that a thin line should tie it to what it names. */
  readonly isFar: boolean;
}

const sides: readonly Side[] = [
  "right",
  "left",
  "above",
  "below",
  "above-right",
  "above-left",
  "below-right",
  "below-left",
];

/** How far a label may go, in gaps, and what each step outwards costs against a less liked side or an overlap. */
const reaches = [1, 2.2, 4, 6] as const;
const farCost = 12;

/** Width of a text in the page's face: a generous mean advance, since a label that is too short for its box is harmless. */
export function textWidth_px(text: string, font_px: number): number {
  return text.length * font_px * 0.56;
}

/**
 * Puts labels beside what they name, one after the other, each where it overlaps least with labels already placed,
 * with `obstacles` and with the edge of the sheet. Near and liked sides win among equals. Pure and deterministic, so
 * a label does not jump about while nothing near it moves.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  obstacles: readonly Box_px[],
  sheet: { readonly width: number; readonly height: number },
  font_px: number,
): PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  for (const wish of wishes) {
    let best: PlacedLabel | undefined;
    let least = Number.POSITIVE_INFINITY;
    const liked = [...(wish.prefer ?? []), ...sides.filter((side) => !wish.prefer?.includes(side))];
    for (const [far, reach] of reaches.entries()) {
      // Going further costs at least this much: nothing there can be better than what is found.
      if (least <= farCost * far) break;
      for (const [rank, side] of liked.entries()) {
        if (rank + farCost * far >= least) break;
        const label = labelAt(wish, side, wish.gap_px * reach, font_px, far > 0);
        let cost = rank + farCost * far + 20 * outside(label.box, sheet);
        for (const other of placed) cost += 10 * overlap(grown(other.box, 3), label.box);
        for (const other of obstacles) {
          if (cost >= least) break;
          cost += 4 * overlap(other, label.box);
        }
        if (cost < least) {
          least = cost;
          best = label;
        }
      }
    }
    placed.push(best!);
  }
  return placed;
}

/** Whether any label lies on another, on an obstacle or over the edge of the sheet by more than a sliver. */
export function isCrowded(
  labels: readonly PlacedLabel[],
  obstacles: readonly Box_px[],
  sheet: { readonly width: number; readonly height: number },
): boolean {
  return labels.some(
    ({ box }, i) =>
      outside(box, sheet) > sliver_px2 ||
      obstacles.some((other) => overlap(other, box) > sliver_px2) ||
      labels.slice(0, i).some((other) => overlap(other.box, box) > sliver_px2),
  );
}

/** Boxes are generous: less than this in common is not seen. */
const sliver_px2 = 12;

function labelAt(wish: LabelWish, side: Side, gap: number, font_px: number, isFar: boolean): PlacedLabel {
  const width = textWidth_px(wish.text, font_px);
  const height = font_px * 1.3;
  const { x, y } = wish.anchor;
  const slant = side.includes("-") ? gap * Math.SQRT1_2 : gap;
  const right = side.endsWith("right");
  const left = side.endsWith("left");
  const textAnchor = right ? "start" : left ? "end" : "middle";
  const textX = right ? x + slant : left ? x - slant : x;
  const boxY = side.startsWith("above") ? y - slant - height : side.startsWith("below") ? y + slant : y - height / 2;
  return {
    id: wish.id,
    text: wish.text,
    box: { x: right ? textX : left ? textX - width : textX - width / 2, y: boxY, width, height },
    textAnchor,
    x: textX,
    baseline: boxY + height * 0.75,
    isFar,
  };
}

/** Area that two boxes share [px²]. */
export function overlap(a: Box_px, b: Box_px): number {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return across > 0 && down > 0 ? across * down : 0;
}

function outside(box: Box_px, sheet: { readonly width: number; readonly height: number }): number {
  return box.width * box.height - overlap(box, { x: 2, y: 0, width: sheet.width - 4, height: sheet.height });
}

function grown(box: Box_px, by: number): Box_px {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

/** A square around a point, as an obstacle. */
export function boxAround(point: Point_px, radius: number): Box_px {
  return { x: point.x - radius, y: point.y - radius, width: 2 * radius, height: 2 * radius };
}

/** A line as a row of small obstacles, since its own bounding box would forbid far more than the line does. */
export function boxesAlong(from: Point_px, to: Point_px, radius = 3): Box_px[] {
  const pieces = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / (2 * radius)));
  return Array.from({ length: pieces + 1 }, (_, i) =>
    boxAround({ x: from.x + ((to.x - from.x) * i) / pieces, y: from.y + ((to.y - from.y) * i) / pieces }, radius),
  );
}
