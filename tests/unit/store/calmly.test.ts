import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createStore } from "zustand/vanilla";
import { calmly } from "../../../src/store/calmly.ts";

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function setUp() {
  const source = createStore<{ n: number; isOld: boolean }>(() => ({ n: 0, isOld: false }));
  const calm = calmly(source, { pace_ms: () => 100, apart_ms: 0 }, (now, shown) => now.isOld !== shown.isOld);
  const seen: number[] = [];
  calm.subscribe(({ n }) => seen.push(n));
  return { source, calm, seen };
}

test("after a rest a change is shown at once", () => {
  const { source, seen } = setUp();
  source.setState({ n: 1 });
  expect(seen).toEqual([1]);
  vi.advanceTimersByTime(101);
  source.setState({ n: 2 });
  expect(seen).toEqual([1, 2]);
});

test("of many changes one in each pace is shown, and the last one always", () => {
  const { source, seen } = setUp();
  for (let n = 1; n <= 30; n++) {
    source.setState({ n });
    vi.advanceTimersByTime(10);
  }
  expect(seen.length).toBeLessThanOrEqual(4);
  expect(seen.length).toBeGreaterThanOrEqual(3);
  vi.advanceTimersByTime(100);
  expect(seen.at(-1)).toBe(30);
  vi.advanceTimersByTime(1000);
  expect(seen.at(-1)).toBe(30);
});

test("what is urgent does not wait, and brings along what is newest", () => {
  const { source, seen, calm } = setUp();
  source.setState({ n: 1 });
  source.setState({ n: 2 });
  expect(seen).toEqual([1]);
  source.setState({ isOld: true });
  expect(calm.getState()).toEqual({ n: 2, isOld: true });
});

test("those that take turns do not change together, and none is left behind", () => {
  const source = createStore<{ n: number }>(() => ({ n: 0 }));
  const turn = { changedAt_ms: Number.NEGATIVE_INFINITY };
  const seen: (readonly [who: number, at_ms: number])[] = [];
  const from_ms = Date.now();
  const calm = [0, 1, 2].map((who) => {
    const one = calmly(source, { pace_ms: () => 100, apart_ms: 30 }, () => false, turn);
    one.subscribe(() => seen.push([who, Date.now() - from_ms]));
    return one;
  });
  for (let n = 1; n <= 30; n++) {
    source.setState({ n });
    vi.advanceTimersByTime(10);
  }
  for (let i = 1; i < seen.length; i++) expect(seen[i]![1] - seen[i - 1]![1]).toBeGreaterThanOrEqual(30);
  for (const who of [0, 1, 2]) expect(seen.filter((one) => one[0] === who).length).toBeGreaterThanOrEqual(2);
  vi.advanceTimersByTime(300);
  expect(calm.map((one) => one.getState().n)).toEqual([30, 30, 30]);
});
