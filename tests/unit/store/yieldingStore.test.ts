import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createStore } from "zustand/vanilla";
import { handStore } from "../../../src/store/handStore.ts";
import { shortageStore } from "../../../src/store/shortageStore.ts";
import { yieldingStore } from "../../../src/store/yieldingStore.ts";

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  handStore.setState({ isHolding: false });
  shortageStore.setState({ isShort: false });
  vi.useRealTimers();
});

function setUp(isHolding: boolean, isShort: boolean) {
  vi.stubGlobal("requestAnimationFrame", () => 0); // here the test says whether frames are short
  handStore.setState({ isHolding });
  shortageStore.setState({ isShort });
  const source = createStore(() => ({ n: 0 }));
  const follower = yieldingStore(source);
  const seen: number[] = [];
  follower.subscribe(({ n }) => seen.push(n));
  const run = (to: number) => {
    for (let n = source.getState().n + 1; n <= to; n++) {
      source.setState({ n });
      vi.advanceTimersByTime(1000 / 60);
    }
  };
  return { follower, seen, run };
}

test.each([
  [false, false],
  [true, false],
  [false, true],
])("it follows at once (something in the hand: %s, frames short: %s)", (isHolding, isShort) => {
  const { seen, run } = setUp(isHolding, isShort);
  run(6);
  expect(seen).toEqual([1, 2, 3, 4, 5, 6]);
});

test("in the hand it follows every second change where frames are short", () => {
  const { seen, run } = setUp(true, true);
  run(6);
  expect(seen).toEqual([2, 4, 6]);
});

test("it is never left behind: not when the hand lets go, nor when it holds still", () => {
  const { follower, run } = setUp(true, true);
  run(7);
  expect(follower.getState().n).toBe(6);
  handStore.setState({ isHolding: false });
  expect(follower.getState().n).toBe(7);
  handStore.setState({ isHolding: true });
  run(8);
  expect(follower.getState().n).toBe(7);
  vi.advanceTimersByTime(100);
  expect(follower.getState().n).toBe(8);
});
