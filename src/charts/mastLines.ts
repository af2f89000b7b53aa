import type { Spot } from "./tracePath.ts";

/** An element as a cut shows it: a mast on the ground line. */
export interface Mast {
  readonly id: string;
  readonly forward_m: number;
  /** Base above ground; 0 on it. */
  readonly base_m: number;
  readonly height_m: number;
  readonly isFed: boolean;
}

export interface MastLine {
  readonly id: string;
  readonly foot: Spot;
  readonly tip: Spot;
  readonly isFed: boolean;
}

/**
 * Masts to scale among themselves (not with the pattern, which has no size): the tallest `tallest_px` high, the first
 * fed one on the hub, forward to the right. Far spacings are kept within `reach_px` by shrinking all.
 */
export function mastLines(masts: readonly Mast[], hub: Spot, tallest_px: number, reach_px: number): MastLine[] {
  const origin = (masts.find((m) => m.isFed) ?? masts[0])?.forward_m ?? 0;
  const tallest = Math.max(...masts.map((m) => m.base_m + m.height_m), 1e-9);
  const farthest = Math.max(...masts.map((m) => Math.abs(m.forward_m - origin)), 1e-9);
  const pxPerMetre = Math.min(tallest_px / tallest, reach_px / farthest);
  return masts.map((m) => {
    const x = hub[0] + (m.forward_m - origin) * pxPerMetre;
    return {
      id: m.id,
      foot: [x, hub[1] - m.base_m * pxPerMetre],
      tip: [x, hub[1] - (m.base_m + m.height_m) * pxPerMetre],
      isFed: m.isFed,
    };
  });
}
