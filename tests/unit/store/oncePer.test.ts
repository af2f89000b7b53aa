import { expect, test, vi } from "vitest";
import { oncePer } from "../../../src/oncePer.ts";
import { verdictOf } from "../../../src/store/verdictOf.ts";
import { yardPlan } from "../yard/yardPlan.ts";

test("the work is done once for each object, by itself and not by what it looks like", () => {
  const work = vi.fn((of: { n: number }) => of.n);
  const once = oncePer(work);
  const one = { n: 1 };
  expect([once(one), once(one), once({ n: 1 }), once({ n: 2 })]).toEqual([1, 1, 1, 2]);
  expect(work).toHaveBeenCalledTimes(3);
});

test("a result that is nothing is a result too", () => {
  const work = vi.fn(() => undefined);
  const once = oncePer(work);
  const one = {};
  once(one);
  once(one);
  expect(work).toHaveBeenCalledOnce();
});

test("a plan is judged once, and another plan by its own measures", () => {
  const good = yardPlan();
  expect(verdictOf(good)).toBe(verdictOf(good));
  expect(verdictOf(good).ok).toBe(true);
  expect(verdictOf({ ...good, frequency_MHz: 0 }).ok).toBe(false);
});
