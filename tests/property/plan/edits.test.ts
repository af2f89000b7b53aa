import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  checkPlan,
  checkSavedPlan,
  drivenOf,
  loneVertical,
  type Plan,
  reflectorOf,
  type SavedPlan,
  spacingOf,
  wavelength_m,
  withBaseline,
  withElementHeight,
  withElementPosition,
  withFrequency,
  withGround,
  withoutPin,
  withoutReflector,
  withPin,
  withRadials,
  withReflector,
  withSpacing,
} from "../../../engine/index.ts";
import { goodPlans, goodSavedPlans } from "./plans.ts";

const fraction = fc.double({ min: 0, max: 1, noNaN: true });

/**
 * Each edit with an argument inside its limits for the plan at hand; `t` and `u` (0 to 1) say where inside. Elements of
 * the plans drawn stand a twentieth of a wavelength apart or more, one behind the other.
 */
const edits: Record<string, (plan: Plan, t: number, u: number) => Plan> = {
  withFrequency: (plan, t) => withFrequency(plan, plan.frequency_MHz * (0.95 + 0.1 * t)),
  withElementHeight: (plan, t, u) =>
    withElementHeight(plan, pick(plan, u), wavelength_m(plan.frequency_MHz) * (0.06 + 0.54 * t)),
  withElementPosition: (plan, t, u) => {
    const id = pick(plan, u);
    const still = plan.elements.find((element) => element.id === id)!;
    return withElementPosition(plan, id, still.forward_m + (t - 0.5) * 0.01 * wavelength_m(plan.frequency_MHz), 3 * t);
  },
  withSpacing: (plan, t) => withSpacing(plan, (0.5 + 0.5 * t) * wavelength_m(plan.frequency_MHz)),
  "withRadials, all": (plan, t) =>
    withRadials(plan, {
      count: Math.round(120 * t),
      length_m: Math.min(0.5 * wavelength_m(plan.frequency_MHz), 160) * (0.1 + 0.9 * t),
      height_m: -0.3 * t,
      insulation: null,
    }),
  "withRadials, one": (plan, t, u) => withRadials(plan, { count: Math.round(120 * t) }, pick(plan, u)),
  "withGround, soil": (plan, t, u) =>
    withGround(plan, { kind: "soil", relativePermittivity: 1 + 99 * t, conductivity_SPerM: 10 * u }),
  "withGround, perfect": (plan) => withGround(plan, { kind: "perfect" }, "screen"),
  withReflector: (plan) => withReflector(plan),
  withoutReflector: (plan) => withoutReflector(plan),
  "withReflector again": (plan) => withReflector(withoutReflector(plan)),
  loneVertical: (plan) => loneVertical(plan),
};

function pick(plan: Plan, u: number): string {
  return plan.elements[Math.min(plan.elements.length - 1, Math.floor(u * plan.elements.length))]!.id;
}

describe("an edit within its limits keeps a checked plan checked, and leaves the plan given alone", {
  timeout: 30_000,
}, () => {
  test.each(Object.keys(edits))("%s", (name) => {
    fc.assert(
      fc.property(goodPlans, fraction, fraction, (plan, t, u) => {
        const before = JSON.stringify(plan);
        const result = checkPlan(edits[name]!(plan, t, u));
        expect(result.ok ? [] : result.problems).toEqual([]);
        expect(JSON.stringify(plan)).toBe(before);
      }),
      { seed: 21, numRuns: 60 },
    );
  });

  test("pins and baselines, in any order", () => {
    const step = fc.tuple(fc.constantFrom("pin", "unpin", "base", "unbase"), fraction);
    let surprises = 0;
    fc.assert(
      fc.property(goodSavedPlans, fc.array(step, { maxLength: 12 }), (start, steps) => {
        let plan: SavedPlan = start;
        for (const [kind, t] of steps) {
          const ids = plan.pins?.map((pin) => pin.id) ?? [];
          const id = ids[Math.min(ids.length - 1, Math.floor(t * ids.length))];
          if (kind === "pin") {
            const pinned = withPin(plan, "again", loneVertical(plan));
            plan = pinned.ok ? pinned.value : plan;
            surprises += pinned.ok === ids.length < 4 ? 0 : 1;
          } else if (kind === "unbase") plan = withBaseline(plan, null);
          else if (id !== undefined) plan = kind === "base" ? withBaseline(plan, id) : withoutPin(plan, id);
          const result = checkSavedPlan(plan);
          expect(result.ok ? [] : result.problems).toEqual([]);
        }
      }),
      { seed: 22, numRuns: 60 },
    );
    expect(surprises).toBe(0);
  });
});

describe("laws of the edits", { timeout: 30_000 }, () => {
  test("the spacing asked for is the spacing read", () => {
    fc.assert(
      fc.property(goodPlans, fraction, (plan, t) => {
        fc.pre(reflectorOf(plan) !== undefined);
        const spacing_m = 1 + 50 * t;
        const edited = withSpacing(plan, spacing_m);
        expect(Math.abs(spacingOf(edited)! - spacing_m)).toBeLessThan(1e-12 * (spacing_m + 1000));
      }),
      { seed: 23, numRuns: 60 },
    );
  });
  test("a reflector put in and taken out leaves the plan as it was", () => {
    fc.assert(
      fc.property(goodPlans, (plan) => {
        const fed = withoutReflector(plan);
        const added = withReflector(fed);
        expect(added.elements.length).toBe(Math.min(fed.elements.length + 1, 4));
        expect(withoutReflector(added)).toEqual(fed);
        expect(drivenOf(added)).toEqual(drivenOf(fed));
      }),
      { seed: 24, numRuns: 60 },
    );
  });
});
