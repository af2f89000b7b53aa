import type { ElevationMap } from "./elevationMap.ts";

const wanted = [10, 30, 60, 45, 20, 5, 3, 75];

/**
 * Elevations worth a number ahead of the zenith (mirror them behind), low to high: the most useful first, and of the
 * rest those that keep `apart_px` from the others. `pxPerDegree` is along the arc or the axis.
 */
export function elevationTicks(map: ElevationMap, pxPerDegree: number, apart_px: number): number[] {
  const kept: number[] = [];
  for (const e of wanted) {
    const s = map.toScreen(e);
    const isFree = kept.every((k) => Math.abs(map.toScreen(k) - s) * pxPerDegree >= apart_px);
    if (isFree && s * pxPerDegree >= apart_px * 0.6 && (90 - s) * pxPerDegree >= apart_px) kept.push(e);
  }
  return kept.sort((a, b) => a - b);
}
