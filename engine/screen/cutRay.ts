import type { GroundFrame } from "./frameGround.ts";
import type { RadialScales } from "./radialScales.ts";

/**
 * Distances from centre i along the direction (c, s) at which the integrand breaks or changes its manner: first the inner
 * limit, last the border of the centre's cell, ascending.
 *
 * @param cuts written; room for two per edge and six more
 * @returns how many; 0 when the ray has no ground of its own
 */
export function cutRay(
  cuts: Float64Array,
  frame: GroundFrame,
  i: number,
  c: number,
  s: number,
  inner: number,
  scales: RadialScales,
): number {
  const ox = frame.x[i]!;
  const oy = frame.y[i]!;
  // Out to the cell circle, or to the line half-way to a neighbour.
  const b = -(ox * c + oy * s);
  let outer = b + Math.sqrt(b * b - (ox * ox + oy * oy) + frame.cellRadius * frame.cellRadius);
  for (let j = 0; j < frame.x.length; j++) {
    if (j === i) continue;
    const dx = frame.x[j]! - ox;
    const dy = frame.y[j]! - oy;
    const towards = dx * c + dy * s;
    if (towards > 0) outer = Math.min(outer, (dx * dx + dy * dy) / (2 * towards));
  }
  if (!(outer > inner)) return 0;
  let count = 0;
  cuts[count++] = inner;
  /** Inserts a distance in order. */
  const cut = (r: number): void => {
    if (!(r > inner && r < outer)) return;
    let at = count++;
    while (cuts[at - 1]! > r) {
      cuts[at] = cuts[at - 1]!;
      at--;
    }
    cuts[at] = r;
  };
  cut(scales.knee);
  cut(scales.wave);
  for (const edge of frame.edges) {
    const dx = edge.x - ox;
    const dy = edge.y - oy;
    const along = dx * c + dy * s;
    const under = along * along - (dx * dx + dy * dy) + edge.radius * edge.radius;
    if (!(under > 0)) continue;
    const root = Math.sqrt(under);
    cut(along - root);
    cut(along + root);
  }
  cuts[count++] = outer;
  return count;
}
