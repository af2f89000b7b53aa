/** Where a list is largest, the first of equals; 0 for an empty one, and what is not a number is passed over. */
export function indexOfMost(values: readonly number[]): number {
  let at = 0;
  values.forEach((value, i) => {
    if (value > values[at]! || Number.isNaN(values[at]!)) at = i;
  });
  return at;
}
