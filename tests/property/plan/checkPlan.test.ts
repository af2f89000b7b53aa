import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkPlan, checkSavedPlan, type Problem, type Result } from "../../../engine/index.ts";
import { goodPlans, goodSavedPlans } from "./plans.ts";

const anything = fc.anything({
  withBigInt: true,
  withDate: true,
  withMap: true,
  withSet: true,
  withTypedArray: true,
  withSparseArray: true,
  withNullPrototype: true,
  withObjectString: true,
});

/** Anything, and often enough something that may happen to fit. */
const replacement = fc.oneof(anything, fc.double(), fc.integer({ min: 0, max: 20 }), fc.string(), fc.jsonValue());

/** A good plan with one value, anywhere in it, replaced. */
const damaged = goodSavedPlans.chain((plan) => {
  const paths: (string | number)[][] = [];
  const walk = (value: unknown, path: (string | number)[]): void => {
    paths.push(path);
    if (typeof value === "object" && value !== null)
      for (const key of Object.keys(value)) walk((value as Record<string, unknown>)[key], [...path, key]);
  };
  walk(plan, []);
  return fc.tuple(fc.constantFrom(...paths), replacement).map(([path, put]) => {
    const set = (value: unknown, at: number): unknown => {
      if (at === path.length) return put;
      const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<string, unknown>;
      const key = String(path[at]);
      copy[key] = set(copy[key], at + 1);
      return copy;
    };
    return set(plan, 0);
  });
});

function expectVerdict(result: Result<unknown>): readonly Problem[] {
  if (result.ok) return [];
  expect(result.problems.length).toBeGreaterThan(0);
  for (const { code, where, message } of result.problems) {
    expect(code).toMatch(/^[a-z-]+$/);
    expect(typeof where).toBe("string");
    expect(message).toMatch(/\.$/);
    // What stands in quotes is the user's own.
    expect(message.replace(/"(?:[^"\\]|\\.)*"/g, "")).not.toMatch(/undefined|\[object/);
  }
  return result.problems;
}

describe("the gate", { timeout: 30_000 }, () => {
  test("lets good plans through unchanged", () => {
    fc.assert(
      fc.property(goodPlans, (plan) => {
        const result = checkPlan(plan);
        // As text, since −0 comes back as 0.
        expect(result.ok ? [] : result.problems).toEqual([]);
        expect(result.ok && JSON.stringify(result.value)).toBe(JSON.stringify(plan));
      }),
      { seed: 1, numRuns: 100 },
    );
    fc.assert(
      fc.property(goodSavedPlans, (plan) => {
        const result = checkSavedPlan(plan);
        expect(result.ok ? [] : result.problems).toEqual([]);
        expect(result.ok && JSON.stringify(result.value)).toBe(JSON.stringify(plan));
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  test("never throws on anything, and says what is wrong in words", () => {
    fc.assert(
      fc.property(anything, (candidate) => {
        expect(expectVerdict(checkPlan(candidate)).length).toBeGreaterThan(0);
        expect(expectVerdict(checkSavedPlan(candidate)).length).toBeGreaterThan(0);
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  test("never throws on a plan with anything anywhere; the verdict does not change, on what passed and was written least of all", () => {
    let passed = 0;
    let refused = 0;
    fc.assert(
      fc.property(damaged, (candidate) => {
        expectVerdict(checkPlan(candidate));
        const result = checkSavedPlan(candidate);
        expectVerdict(result);
        if (result.ok) passed++;
        else refused++;
        const again = checkSavedPlan(result.ok ? JSON.parse(JSON.stringify(result.value)) : candidate);
        expect(again).toEqual(result);
      }),
      { seed: 4, numRuns: 200 },
    );
    // Both ways out were taken, or the law above was not tried.
    expect(Math.min(passed, refused)).toBeGreaterThan(15);
  });

  test("proxies that throw from any trap", () => {
    const traps = ["get", "has", "ownKeys", "getPrototypeOf", "getOwnPropertyDescriptor"] as const;
    fc.assert(
      fc.property(goodPlans, fc.subarray([...traps], { minLength: 1 }), anything, (plan, chosen, thrown) => {
        const handler = Object.fromEntries(
          chosen.map((trap) => [
            trap,
            () => {
              throw thrown;
            },
          ]),
        );
        for (const candidate of [
          new Proxy(plan, handler),
          { ...plan, elements: new Proxy([...plan.elements], handler) },
        ])
          expectVerdict(checkPlan(candidate));
      }),
      { seed: 5, numRuns: 100 },
    );
  });
});
