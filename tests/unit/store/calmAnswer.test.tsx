import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { noAnswer } from "../../../src/store/Answer.ts";
import { handStore } from "../../../src/store/handStore.ts";
import { shortageStore } from "../../../src/store/shortageStore.ts";
import { answerStore } from "../../../src/store/useAnswer.ts";
import { useCalmAnswer } from "../../../src/store/useCalmAnswer.ts";

/** Each test long after the one before: the stores remember when they changed. */
let now_ms = Date.now();

beforeEach(() => {
  now_ms += 1e6;
  vi.useFakeTimers({ now: now_ms });
  act(() => {
    answerStore.setState(noAnswer, true);
    handStore.setState({ isHolding: false });
    shortageStore.setState({ isShort: false });
    vi.advanceTimersByTime(1000);
  });
});
afterEach(() => {
  act(() => {
    vi.advanceTimersByTime(1000); // no test leaves one waiting
  });
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** Any part of an answer that is no matter of urgency will do to tell one from another. */
const answer = (n: number) => {
  act(() => {
    answerStore.setState({ refining: { done: n, total: 9 } });
  });
};

test("in the hand figures follow at a pace, and are the last ones when it lets go", () => {
  const { result } = renderHook(() => useCalmAnswer((s) => s.refining?.done));
  act(() => {
    handStore.setState({ isHolding: true });
  });
  answer(1);
  answer(2);
  answer(3);
  expect(result.current).toBe(1);
  act(() => {
    handStore.setState({ isHolding: false });
  });
  expect(result.current).toBe(3);
});

test("with nothing in the hand they are never those of a moment ago", () => {
  const { result } = renderHook(() => useCalmAnswer((s) => s.refining?.done));
  for (let n = 1; n < 5; n++) {
    answer(n);
    expect(result.current).toBe(n);
  }
});

test("a hand that moves less often than frames come does not set them with each move and each answer", () => {
  const { result } = renderHook(() => useCalmAnswer((s) => s.refining?.done));
  act(() => {
    handStore.setState({ isHolding: true });
  });
  const seen = new Set<number | undefined>();
  for (let n = 1; n <= 60; n++) {
    answer(n);
    act(() => {
      answerStore.setState({ state: n % 2 === 0 ? "fresh" : "working" });
      vi.advanceTimersByTime(1000 / 60);
    });
    seen.add(result.current);
  }
  expect(seen.size).toBeGreaterThanOrEqual(4);
  expect(seen.size).toBeLessThanOrEqual(6);
});

test("where frames are short they follow half as often, and are the last ones all the same", () => {
  vi.stubGlobal("requestAnimationFrame", () => 0); // here the test says whether frames are short
  const { result } = renderHook(() => useCalmAnswer((s) => s.refining?.done));
  act(() => {
    handStore.setState({ isHolding: true });
  });
  let told = 0;
  const changes = () => {
    const seen = new Set<number | undefined>();
    for (let n = 0; n < 120; n++) {
      answer(++told);
      act(() => {
        vi.advanceTimersByTime(1000 / 60);
      });
      seen.add(result.current);
    }
    return seen.size;
  };
  const many = changes();
  act(() => {
    shortageStore.setState({ isShort: true });
  });
  const few = changes();
  expect(many).toBeGreaterThanOrEqual(7);
  expect(few).toBeGreaterThanOrEqual(3);
  expect(few).toBeLessThanOrEqual(6);
  answer(++told);
  act(() => {
    vi.advanceTimersByTime(1000);
  });
  expect(result.current).toBe(told);
});
