import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { withSpacing } from "../../../engine/index.ts";
import { handStore } from "../../../src/store/handStore.ts";
import { useCalmPlan } from "../../../src/store/useCalmPlan.ts";
import { planStore } from "../../../src/store/usePlan.ts";

/** Each test long after the one before: the stores remember when they changed. */
let now_ms = Date.now();

beforeEach(() => {
  now_ms += 1e6;
  vi.useFakeTimers({ now: now_ms });
  hold(false);
  pass(1000);
});
afterEach(() => {
  pass(1000); // no test leaves one waiting
  vi.useRealTimers();
});

const hold = (isHolding: boolean) => {
  act(() => {
    handStore.setState({ isHolding });
  });
};
const pass = (ms: number) => {
  act(() => {
    vi.advanceTimersByTime(ms);
  });
};
const space = (spacing_m: number) => {
  act(() => planStore.getState().edit((plan) => withSpacing(plan, spacing_m), "move", "move"));
};
const shownSpacing = () => renderHook(() => useCalmPlan((s) => -s.plan.elements[1]!.forward_m)).result;

test("with nothing in the hand every place is shown at once", () => {
  const shown = shownSpacing();
  for (const spacing_m of [6, 6.5, 7]) {
    space(spacing_m);
    expect(shown.current).toBeCloseTo(spacing_m, 9);
  }
});

test("in the hand the shown place changes a few times a second, and never goes back", () => {
  const shown = shownSpacing();
  hold(true);
  const seen: number[] = [];
  for (let i = 1; i <= 60; i++) {
    space(7 + i / 60);
    pass(1000 / 60);
    if (seen.at(-1) !== shown.current) seen.push(shown.current);
  }
  expect(seen.length).toBeGreaterThanOrEqual(3);
  expect(seen.length).toBeLessThanOrEqual(5);
  expect(seen).toEqual(seen.toSorted((a, b) => a - b));
  expect(seen.at(-1)).toBeGreaterThan(7.7);
});

test("in the hand the last place is shown though nothing moves any more", () => {
  const shown = shownSpacing();
  hold(true);
  space(6);
  space(6.1);
  space(6.2);
  expect(shown.current).toBeCloseTo(6, 9);
  pass(1000);
  expect(shown.current).toBeCloseTo(6.2, 9);
});

test("when the hand lets go the last place is there at once", () => {
  const shown = shownSpacing();
  hold(true);
  space(6);
  space(6.1);
  hold(false);
  expect(shown.current).toBeCloseTo(6.1, 9);
});
