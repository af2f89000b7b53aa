import type { Range } from "./Range.ts";

/** The values of a range, both ends exact. */
export function rangeValues({ from, to, points }: Range): number[] {
  return Array.from({ length: points }, (_, i) => (i === points - 1 ? to : from + ((to - from) * i) / (points - 1)));
}
