import { scaleLinear } from "d3-scale";
import type { Box } from "../../../charts/placeLabels.ts";
import type { Spot } from "../../../charts/tracePath.ts";

export interface LineLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly from: number;
  readonly to: number;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  x(value: number): number;
  y(value: number): number;
  xAt(px: number): number;
  point(x: number, y: number): Spot;
}

interface Asked {
  readonly width_px: number;
  readonly text_px: number;
  readonly from: number;
  readonly to: number;
  /** The scale is fitted to these … */
  readonly values: readonly number[];
  /** … within these, where given. */
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  readonly tall_px: number;
}

/** How far outside the plot a line is still followed: it leaves the frame with its own slope, not along its edge. */
const beyond_px = 4000;
/** The smallest span a scale is fitted to: nothing below it is worth a picture. */
const leastSpan = 0.5;

/** Anything to the right, any quantity upward, both even. */
export function lineLayout(a: Asked): LineLayout {
  const { text_px, width_px } = a;
  const left = 3.2 * text_px;
  const right = width_px - 1.2 * text_px;
  const top = 1.9 * text_px;
  const foot = top + a.tall_px;
  const across = scaleLinear([a.from, a.to], [left, right]);
  const [low, high] = spanOf(a);
  const up = scaleLinear([low, high], [foot, top]).nice(5);
  return {
    width: width_px,
    height: Math.ceil(foot + 3.3 * text_px),
    plot: { x: left, y: top, width: right - left, height: a.tall_px },
    from: a.from,
    to: a.to,
    xTicks: across.ticks(Math.max(2, Math.floor((right - left) / (5 * text_px)))),
    yTicks: up.ticks(5),
    x: across,
    // NaN passes through and stays a gap.
    y: (value) => Math.max(top - beyond_px, Math.min(foot + beyond_px, up(value))),
    xAt: (px) => across.invert(Math.max(left, Math.min(right, px))),
    point: (x, y) => [across(x), Math.max(top - beyond_px, Math.min(foot + beyond_px, up(y)))],
  };
}

function spanOf({ values, least, most }: Asked): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const v of values) {
    if (!Number.isFinite(v)) continue;
    low = Math.min(low, v);
    high = Math.max(high, v);
  }
  if (low > high) [low, high] = [0, 1];
  low = Math.max(low, least ?? low);
  high = Math.min(high, most ?? high);
  const short = Math.max(0, leastSpan - (high - low)) / 2;
  return [low - short, high + short];
}
