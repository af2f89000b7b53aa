const HALVINGS = 50;

/**
 * Where a smooth function passes zero between the places it was looked at, by bisection: one for each two neighbours of
 * different sign. Values within `noise` of zero have none, and neighbours are then sought beyond them.
 */
export function zerosBetween(
  places: readonly number[],
  of: (x: number) => number,
  noise = 0,
): readonly { readonly at: number; readonly isRising: boolean }[] {
  const signed = places.map((x) => ({ x, y: of(x) })).filter(({ y }) => Math.abs(y) > noise);
  return signed.slice(1).flatMap((after, i) => {
    const before = signed[i]!;
    if (before.y > 0 === after.y > 0) return [];
    let [low, high] = [before.x, after.x];
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (low + high) / 2;
      if (of(middle) > 0 === before.y > 0) low = middle;
      else high = middle;
    }
    return [{ at: (low + high) / 2, isRising: after.y > 0 }];
  });
}
