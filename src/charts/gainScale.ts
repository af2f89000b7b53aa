/** From the outer ring down to the middle of a polar plot, or the foot of a rectangular one. */
export const span_dB = 30;
/** Between rings: an S-unit. */
export const ringStep_dB = 6;

/** Gain at the middle of a polar plot, or the foot of a rectangular one. */
export const floor_dBi = (outer_dBi: number) => outer_dBi - span_dB;

/** The rings that are drawn and numbered, outermost first; the middle (outer − 30 dB) is no ring. */
export function ringLevels(outer_dBi: number): number[] {
  return Array.from({ length: span_dB / ringStep_dB }, (_, i) => outer_dBi - i * ringStep_dB);
}

/**
 * The outer ring that holds every gain given: a multiple of 6 dB and at least 6 dBi, so that most designs over soil
 * share one scale and a louder pattern looks louder instead of being drawn smaller.
 */
export function outerRing_dBi(gains_dBi: Iterable<number>): number {
  let loudest = Number.NEGATIVE_INFINITY;
  for (const g of gains_dBi) if (g > loudest && g < Number.POSITIVE_INFINITY) loudest = g;
  return Math.max(6, Math.ceil(loudest / ringStep_dB) * ringStep_dB);
}

/**
 * Gain to distance in px from the middle. At and below the floor: the middle. Above the outer ring it goes on
 * outward, so that a held scale shows a pattern that has outgrown it. Not finite in, NaN out: a gap.
 */
export function gainScale(outer_dBi: number, size_px: number): (gain_dBi: number) => number {
  const floor = floor_dBi(outer_dBi);
  return (gain) => (Number.isFinite(gain) ? (Math.max(0, gain - floor) / span_dB) * size_px : Number.NaN);
}
