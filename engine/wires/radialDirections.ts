/**
 * Directions of evenly spread radials, counter-clockwise from the beam [rad]. They are turned so that none lies along
 * the beam, where it would run into the neighbour's base: by half a step, which keeps left and right alike, or by a
 * quarter of one when the count is odd and half a step would point one backwards.
 */
export function radialDirections(count: number): number[] {
  const turn = count % 2 === 0 ? 0.5 : 0.25;
  return Array.from({ length: count }, (_, i) => (2 * Math.PI * (i + turn)) / count);
}
