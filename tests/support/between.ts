import fc from "fast-check";

/** A number from min to max, evenly spread; fast-check's own doubles crowd at zero, where little is to be learned. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((i) => min + ((max - min) * i) / 1_000_000);
