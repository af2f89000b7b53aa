import { expect, test } from "vitest";
import fixture from "../fixtures/perfectGround.json" with { type: "json" };
import { compareCase } from "../support/compareCase.ts";
import type { ReferenceCase } from "../support/ReferenceCase.ts";

/* The free-space cases of the same independent solution: centre-fed dipoles alone and in arrays. */
const cases = (fixture.cases as unknown as ReferenceCase[]).filter((c) => c.freeSpace);

test("every kind of case is there", () => {
  expect(cases.map((c) => c.elements.length).sort((a, b) => a - b)).toEqual([1, 1, 2, 3]);
});

test.each(cases.map((c) => [c.id, c] as const))("%s", (_, reference) => {
  const all = compareCase(reference, fixture.tolerances);
  expect(all.length).toBeGreaterThan(10);
  expect(all.filter((c) => !(c.error <= c.limit))).toEqual([]);
});
