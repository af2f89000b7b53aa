/**
 * Where to cut a run of wire into n segments: fractions 0 … 1 of its length, n + 1 of them, crowded towards both ends.
 *
 *   x_i = (1 − β) sin²(πi/2n) + β i/n
 *
 * Charge piles up at the end of a wire, and with equal segments the error falls only as 1/n; crowded like this it falls
 * as 1/n². β = 0 is fully crowded, β = 1 is equal; it is the smallest at which the end segment is not below `shortest`.
 *
 * @param shortest least fraction of the run that an end segment may have
 */
export function crowdedCuts(n: number, shortest: number): Float64Array {
  const crowded = Math.sin(Math.PI / (2 * n)) ** 2;
  const beta = n < 3 ? 1 : Math.min(1, Math.max(0, (shortest - crowded) / (1 / n - crowded)));
  const cuts = new Float64Array(n + 1);
  for (let i = 0; i <= n; i++) cuts[i] = (1 - beta) * Math.sin((0.5 * Math.PI * i) / n) ** 2 + (beta * i) / n;
  cuts[n] = 1;
  return cuts;
}
