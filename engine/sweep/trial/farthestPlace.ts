import { combinations } from "./combinations.ts";
import { indexOfMost } from "./indexOfMost.ts";

/** Places looked at first, in all. */
const GRID = 256;
const FEWEST_ON_AXIS = 4;
/** Then steps are halved so often. */
const HALVINGS = 3;

/**
 * Where on a box, −1..1 on each axis, a function is largest, as far as a grid of some 256 places and a few smaller steps from the
 * largest of them tell.
 */
export function farthestPlace(axes: number, of: (place: readonly number[]) => number): readonly number[] {
  const count = Math.max(FEWEST_ON_AXIS, Math.round(GRID ** (1 / axes)));
  const middles = Array.from({ length: count }, (_, i) => (2 * i + 1) / count - 1);
  const places = combinations(Array.from({ length: axes }, () => middles));
  const values = places.map(of);
  const most = indexOfMost(values);
  let place = places[most]!;
  let value = values[most]!;
  for (let i = 1, step = 0.5 / count; i <= HALVINGS; i++, step /= 2)
    for (let axis = 0; axis < axes; axis++)
      for (const way of [-step, step]) {
        const tried = place.with(axis, place[axis]! + way);
        const there = of(tried);
        if (there > value) {
          place = tried;
          value = there;
        }
      }
  return place;
}
