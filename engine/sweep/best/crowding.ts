/**
 * How much room each point of a front has: the sum over costs of the gap between its neighbours either side, as a part of
 * the whole front's extent; infinite for the ends. The more, the more it is worth keeping.
 *
 * Source: crowding distance, K. Deb et al., IEEE Transactions on Evolutionary Computation 6 (2002) 182-197.
 *
 * @param costs one list a point, all of one length
 */
export function crowding(costs: readonly (readonly number[])[]): number[] {
  const room = costs.map(() => 0);
  for (let c = 0; c < (costs[0]?.length ?? 0); c++) {
    const order = costs.map((_, i) => i).sort((a, b) => costs[a]![c]! - costs[b]![c]!);
    const [first, last] = [order[0]!, order.at(-1)!];
    const extent = costs[last]![c]! - costs[first]![c]!;
    room[first] = room[last] = Number.POSITIVE_INFINITY;
    if (extent > 0)
      for (let k = 1; k + 1 < order.length; k++)
        room[order[k]!]! += (costs[order[k + 1]!]![c]! - costs[order[k - 1]!]![c]!) / extent;
  }
  return room;
}
