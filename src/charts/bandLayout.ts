import { scaleLinear, scaleLog } from "d3-scale";
import type { Box } from "./placeLabels.ts";
import type { BandQuantity } from "./readSweep.ts";
import type { Spot } from "./tracePath.ts";

/** SWR at the top of the chart. The widest is drawn on a logarithm, so that the low end keeps its room. */
export type SwrTop = 3 | 5 | 10;

export interface BandLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly ticks: readonly number[];
  readonly frequencyTicks_MHz: readonly number[];
  x(frequency_MHz: number): number;
  y(value: number): number;
  point(frequency_MHz: number, value: number): Spot;
  frequencyAt(spot: Spot): number;
}

interface Asked {
  readonly width_px: number;
  readonly text_px: number;
  readonly quantity: BandQuantity;
  readonly top: SwrTop;
  readonly from_MHz: number;
  readonly to_MHz: number;
  /** All values to be drawn; a scale of ohms is fitted to them, one of SWR is not. */
  readonly values: readonly number[];
}

/** How far outside the plot a line is still followed: it leaves the frame with its own slope, not along its edge. */
const beyond_px = 4000;

const swrTicks: Readonly<Record<SwrTop, readonly number[]>> = {
  3: [1, 1.5, 2, 2.5, 3],
  5: [1, 1.5, 2, 3, 4, 5],
  10: [1, 1.5, 2, 3, 5, 10],
};

/** Frequency to the right, the quantity upward. */
export function bandLayout(a: Asked): BandLayout {
  const { text_px, width_px } = a;
  const left = 3.2 * text_px;
  const right = width_px - 1.4 * text_px;
  const top = 1.1 * text_px;
  const tall = Math.max(110, Math.min(a.quantity === "swr" ? 240 : 170, (right - left) * 0.5));
  const foot = top + tall;
  const across = scaleLinear([a.from_MHz, a.to_MHz], [left, right]);
  const { place, ticks } = a.quantity === "swr" ? swrAxis(a.top, foot, top) : ohmAxis(a.values, foot, top);
  // NaN passes through both, and stays a gap.
  const y = (value: number) => Math.max(top - beyond_px, Math.min(foot + beyond_px, place(value)));
  const room = Math.max(2, Math.floor((right - left) / (6 * text_px)));
  return {
    width: width_px,
    height: Math.ceil(foot + 3.4 * text_px),
    plot: { x: left, y: top, width: right - left, height: tall },
    ticks,
    frequencyTicks_MHz: across.ticks(room),
    x: across,
    y,
    point: (f, value) => [across(f), y(value)],
    frequencyAt: ([x]) => across.invert(Math.max(left, Math.min(right, x))),
  };
}

function swrAxis(top: SwrTop, foot_px: number, top_px: number) {
  const scale = top === 10 ? scaleLog([1, top], [foot_px, top_px]) : scaleLinear([1, top], [foot_px, top_px]);
  return { place: (v: number) => (v === Number.POSITIVE_INFINITY ? -1e9 : scale(v)), ticks: swrTicks[top] };
}

function ohmAxis(values: readonly number[], foot_px: number, top_px: number) {
  let low = 0;
  let high = 0;
  for (const v of values) {
    if (!Number.isFinite(v)) continue;
    if (v < low) low = v;
    if (v > high) high = v;
  }
  if (low === high) high = low + 50;
  const scale = scaleLinear([low, high], [foot_px, top_px]).nice(4);
  return { place: (v: number) => (Number.isFinite(v) ? scale(v) : Number.NaN), ticks: scale.ticks(4) };
}
