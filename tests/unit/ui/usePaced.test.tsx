import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { calmPace_ms } from "../../../src/store/calmPace.ts";
import { usePaced } from "../../../src/ui/usePaced.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const paced = () =>
  renderHook(({ value, isMoving }) => usePaced(value, isMoving), { initialProps: { value: 0, isMoving: false } });
const pass = (ms: number) => {
  act(() => {
    vi.advanceTimersByTime(ms);
  });
};

test("at rest every value is shown at once", () => {
  const { result, rerender } = paced();
  for (let value = 1; value < 5; value++) {
    rerender({ value, isMoving: false });
    expect(result.current).toBe(value);
  }
});

test("in motion the shown value changes a few times a second, and never goes back", () => {
  const { result, rerender } = paced();
  const shown: number[] = [];
  for (let value = 1; value <= 60; value++) {
    rerender({ value, isMoving: true });
    pass(1000 / 60);
    if (shown.at(-1) !== result.current) shown.push(result.current);
  }
  expect(shown.length).toBeGreaterThanOrEqual(4);
  expect(shown.length).toBeLessThanOrEqual(6);
  expect(shown).toEqual(shown.toSorted((a, b) => a - b));
  expect(shown.at(-1)).toBeGreaterThan(46);
});

test("in motion the last value is shown though nothing moves any more", () => {
  const { result, rerender } = paced();
  rerender({ value: 1, isMoving: true });
  pass(1);
  rerender({ value: 2, isMoving: true });
  rerender({ value: 3, isMoving: true });
  expect(result.current).toBe(1);
  pass(calmPace_ms);
  expect(result.current).toBe(3);
});

test("when the motion ends the last value is there at once, and the next motion starts from it", () => {
  const { result, rerender } = paced();
  rerender({ value: 1, isMoving: true });
  pass(1);
  rerender({ value: 2, isMoving: true });
  rerender({ value: 2, isMoving: false });
  expect(result.current).toBe(2);
  rerender({ value: 2, isMoving: true });
  expect(result.current).toBe(2);
});
