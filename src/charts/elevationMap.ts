/** How an elevation is laid out on the page; both ways, in degrees, over the half circle 0 (ahead) to 180 (behind). */
export interface ElevationMap {
  toScreen(elevation_deg: number): number;
  toElevation(screen_deg: number): number;
}

/** Below this the logarithm is nearly linear; it decides how much room the low angles get. */
const knee_deg = 20;
const reach = Math.log1p(90 / knee_deg);

const asIs: ElevationMap = { toScreen: (e) => e, toElevation: (s) => s };

const stretch = (e: number) => (90 * Math.log1p(e / knee_deg)) / reach;
const relax = (s: number) => knee_deg * Math.expm1((s * reach) / 90);

/**
 * True angles, or the low ones stretched: screen = 90 ln(1 + e/20) / ln(1 + 90/20) up to the zenith, mirrored behind
 * it. Stretched, 0..30 degrees take 48 of the 90 degrees of the quarter and 3 degrees stand at 7. A logarithm rather
 * than two straight pieces, because a curve drawn across a kink shows a corner that is not in the pattern. Monotone,
 * and its own inverse to rounding.
 */
export function elevationMap(stretched: boolean): ElevationMap {
  if (!stretched) return asIs;
  return {
    toScreen: (e) => (e <= 90 ? stretch(e) : 180 - stretch(180 - e)),
    toElevation: (s) => (s <= 90 ? relax(s) : 180 - relax(180 - s)),
  };
}
