import { expect, test } from "vitest";
import { createStore } from "zustand/vanilla";
import { heldForFrame } from "../../../src/store/heldForFrame.ts";

function setUp() {
  const store = createStore<{ plan: number; answer: number }>(() => ({ plan: 0, answer: 0 }));
  const seen: object[] = [];
  store.subscribe((state) => seen.push(state));
  const frames: (() => void)[] = [];
  const held = heldForFrame(store, (work) => frames.push(work));
  const draw = () => {
    for (const work of frames.splice(0)) work();
  };
  return { store, seen, frames, held, draw };
}

test("what is set between two frames reaches the store in one piece, with the frame", () => {
  const { store, seen, held, draw } = setUp();
  held.setState({ plan: 1 });
  held.setState({ answer: 1 });
  expect(store.getState()).toEqual({ plan: 0, answer: 0 });
  // Who asks here must not act on what has been overtaken.
  expect(held.getState()).toEqual({ plan: 1, answer: 1 });
  draw();
  expect(seen).toEqual([{ plan: 1, answer: 1 }]);
});

test("work done together takes along what was held, at once and in one piece, and leaves nothing for the frame", () => {
  const { seen, held, draw, frames } = setUp();
  held.setState({ answer: 1 });
  held.together(() => {
    held.setState({ plan: 2 });
    held.setState({ plan: 3 });
    expect(seen).toEqual([]);
  });
  expect(seen).toEqual([{ plan: 3, answer: 1 }]);
  draw();
  expect(seen).toHaveLength(1);
  // A frame asked for inside would come before the next movement of a drag and split it from its answer.
  held.together(() => held.setState({ plan: 4 }));
  expect(frames).toHaveLength(0);
});

test("after a frame the next one is asked for again", () => {
  const { seen, held, draw } = setUp();
  held.setState({ answer: 1 });
  draw();
  held.setState({ answer: 2 });
  draw();
  expect(seen).toEqual([
    { plan: 0, answer: 1 },
    { plan: 0, answer: 2 },
  ]);
});
