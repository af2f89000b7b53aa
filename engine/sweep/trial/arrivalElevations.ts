import { gaussLegendre } from "../../quad/gaussLegendre.ts";

/** Enough for a gain that is smooth over any band of elevations. */
const ANGLES = 5;

/**
 * Elevations [degrees] and weights that add to 1, by which a mean over all elevations between two is taken: Gauss's rule
 * of five points, exact for a polynomial of degree nine. One elevation, where both ends are the same.
 */
export function arrivalElevations(range: {
  readonly from: number;
  readonly to: number;
}): readonly { readonly elevation_deg: number; readonly weight: number }[] {
  const { from, to } = range;
  if (from === to) return [{ elevation_deg: from, weight: 1 }];
  const { node, weight } = gaussLegendre(ANGLES);
  return Array.from(node, (v, i) => ({ elevation_deg: from + (to - from) * v, weight: weight[i]! }));
}
