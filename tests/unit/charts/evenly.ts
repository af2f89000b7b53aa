import fc from "fast-check";

/**
 * Numbers spread evenly over a range, to a thousandth. fast-check's own doubles are spread evenly over their bit
 * patterns: nearly all of those between 0 and 180 are too small to tell a wrong formula from a right one.
 */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: min * 1000, max: max * 1000 }).map((thousandths) => thousandths / 1000);
}
