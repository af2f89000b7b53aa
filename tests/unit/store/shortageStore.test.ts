import { afterEach, expect, test, vi } from "vitest";
import { handStore } from "../../../src/store/handStore.ts";
import { shortageStore } from "../../../src/store/shortageStore.ts";

afterEach(() => void vi.unstubAllGlobals());

test("frames are watched while something is in the hand, and only then", () => {
  let next: ((now_ms: number) => void) | undefined;
  vi.stubGlobal("requestAnimationFrame", (work: (now_ms: number) => void) => {
    next = work;
    return 1;
  });
  let now_ms = 0;
  const frames = (count: number, gap_ms: number) => {
    for (let i = 0; i < count && next; i++) {
      const work = next;
      next = undefined;
      now_ms += gap_ms;
      work(now_ms);
    }
  };
  frames(30, 50);
  expect(next).toBeUndefined();
  expect(shortageStore.getState().isShort).toBe(false);

  handStore.setState({ isHolding: true });
  frames(30, 50);
  expect(shortageStore.getState().isShort).toBe(true);

  // Let go and taken up again: what was known is known still, the time between is no frame.
  handStore.setState({ isHolding: false });
  frames(30, 50);
  expect(next).toBeUndefined();
  handStore.setState({ isHolding: true });
  now_ms += 1e5;
  frames(1, 16);
  expect(shortageStore.getState().isShort).toBe(true);
  frames(120, 16);
  expect(shortageStore.getState().isShort).toBe(false);
  for (let drag = 0; drag < 10; drag++) {
    handStore.setState({ isHolding: false });
    frames(1, 16);
    now_ms += 1e5;
    handStore.setState({ isHolding: true });
    frames(5, 16);
    expect(shortageStore.getState().isShort).toBe(false);
  }
  handStore.setState({ isHolding: false });
});
