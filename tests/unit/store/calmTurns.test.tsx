import { act, cleanup, renderHook } from "@testing-library/react";
import { afterEach, expect, test, vi } from "vitest";
import { useHeadlineAnswer } from "../../../src/headline/useHeadlineAnswer.ts";
import type { Answer } from "../../../src/store/Answer.ts";
import { handStore } from "../../../src/store/handStore.ts";
import { answerStore } from "../../../src/store/useAnswer.ts";
import { useCalmAnswer } from "../../../src/store/useCalmAnswer.ts";

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

test("that an answer is old is never late; its model is not where it is written, and takes its turn elsewhere", () => {
  vi.useFakeTimers();
  const of = (select: (s: Answer) => unknown) => ({
    headline: renderHook(() => useHeadlineAnswer(select)).result,
    room: renderHook(() => useCalmAnswer(select)).result,
  });
  const state = of((s) => s.state);
  const model = of((s) => s.model);
  act(() => {
    answerStore.setState({ state: "fresh", model: "full-wave" });
    handStore.setState({ isHolding: true });
  });
  // Whose turn it was has had it.
  act(() => answerStore.setState({ refining: { done: 1, total: 2 } }));
  act(() => answerStore.setState({ state: "old" }));
  expect([state.headline.current, state.room.current]).toEqual(["old", "old"]);
  act(() => answerStore.setState({ state: "fresh" }));
  expect([state.headline.current, state.room.current]).toEqual(["fresh", "fresh"]);
  act(() => answerStore.setState({ model: "preview" }));
  expect([model.headline.current, model.room.current]).toEqual(["preview", "full-wave"]);
  act(() => {
    vi.advanceTimersByTime(400);
  });
  expect(model.room.current).toBe("preview");
});
