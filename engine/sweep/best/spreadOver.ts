/**
 * Picks `most` points spread over a front: those named first, the cheapest in each cost, then again and again the one
 * farthest from all picked, with each cost as a part of its extent. As indices, in the order picked.
 */
export function spreadOver(
  costs: readonly (readonly number[])[],
  most: number,
  first: readonly number[] = [],
): number[] {
  if (costs.length === 0) return [];
  const dimensions = costs[0]!.map((_, c) => c);
  const low = dimensions.map((c) => Math.min(...costs.map((cost) => cost[c]!)));
  const high = dimensions.map((c) => Math.max(...costs.map((cost) => cost[c]!)));
  const scaled = costs.map((cost) =>
    cost.map((x, c) => (high[c]! > low[c]! ? (x - low[c]!) / (high[c]! - low[c]!) : 0)),
  );
  const picked: number[] = [];
  const away = costs.map(() => Number.POSITIVE_INFINITY);
  const pick = (i: number) => {
    if (picked.length >= most || picked.includes(i)) return;
    picked.push(i);
    scaled.forEach((point, j) => {
      const d2 = point.reduce((sum, x, c) => sum + (x - scaled[i]![c]!) ** 2, 0);
      away[j] = Math.min(away[j]!, d2);
    });
  };
  for (const i of first) pick(i);
  for (const c of dimensions) pick(costs.findIndex((cost) => cost[c] === low[c]));
  for (;;) {
    let farthest = 0;
    for (let i = 1; i < away.length; i++) if (away[i]! > away[farthest]!) farthest = i;
    if (picked.length >= most || !(away[farthest]! > 0)) return picked;
    pick(farthest);
  }
}
