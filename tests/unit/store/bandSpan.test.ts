import { expect, test } from "vitest";
import { bandSpan } from "../../../src/store/bandSpan.ts";

const own = { label: "2 % to either side", from_MHz: 7 * 0.98, to_MHz: 7 * 1.02 };

test("the plan's band is the span; without one, 2 % to either side", () => {
  const band = { label: "40 m", from_MHz: 7, to_MHz: 7.2 };
  expect(bandSpan(band, 7)).toBe(band);
  expect(bandSpan(undefined, 7)).toEqual(own);
});

test.each([
  ["in the wrong order", 7.2, 7],
  ["of no width", 7, 7],
  ["from nothing", 0, 7.2],
  ["not a number", Number.NaN, 7.2],
  ["without end", 7, Number.POSITIVE_INFINITY],
])("a band %s is none", (_, from_MHz, to_MHz) => {
  expect(bandSpan({ label: "odd", from_MHz, to_MHz }, 7)).toEqual(own);
});
