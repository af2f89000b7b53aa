import { gaussLegendre } from "../../quad/gaussLegendre.ts";

/** Elevations and azimuths by which radiated power is summed; see `radiatedPart` for what that leaves. */
const ELEVATIONS = 10;
const AZIMUTHS = 20;

/** Directions over the upper half space, and the part of the whole each elevation's ring stands for. */
export interface Hemisphere {
  readonly elevations_deg: readonly number[];
  /** ½ ∫ cos α dα: a gain of 1 everywhere sums to ½. */
  readonly weights: readonly number[];
  readonly azimuths_deg: readonly number[];
}

/**
 * A rule for ∫ G dΩ/4π over the upper half space: Gauss in √(elevation), crowding at the horizon where soil turns the
 * pattern fast, and equal steps of azimuth.
 */
export function hemisphere(): Hemisphere {
  const { node, weight } = gaussLegendre(ELEVATIONS);
  return {
    elevations_deg: Array.from(node, (v) => 90 * v * v),
    weights: Array.from(node, (v, i) => 0.5 * weight[i]! * Math.PI * v * Math.cos(0.5 * Math.PI * v * v)),
    azimuths_deg: Array.from({ length: AZIMUTHS }, (_, i) => (360 / AZIMUTHS) * i),
  };
}
