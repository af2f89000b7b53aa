import { describe, expect, test } from "vitest";
import { withSpacing } from "../../../engine/index.ts";
import { createPlanStore, longestHistory } from "../../../src/store/createPlanStore.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";

const fresh = () => {
  const store = createPlanStore(demoPlan);
  const now = () => store.getState();
  const title = (text: string, key?: string) =>
    now().edit((plan) => ({ ...plan, title: text }), `call it ${text}`, key);
  return { now, title };
};

describe("undo", () => {
  test("a drag of many edits is one step, and undo brings back the very plan from before it", () => {
    const { now } = fresh();
    for (const spacing_m of [8, 7.5, 7, 6.5])
      now().edit((plan) => withSpacing(plan, spacing_m), "move the reflector", "drag");
    now().undo();
    expect(now().plan).toBe(demoPlan);
    expect(now().canUndo).toBe(false);
  });

  test("two drags with the same key are two steps once the first was sealed", () => {
    const { now, title } = fresh();
    title("a", "drag");
    now().sealEdit();
    title("b", "drag");
    now().undo();
    expect(now().plan.title).toBe("a");
  });

  test("an edit with another key, or none, ends the merging", () => {
    const { now, title } = fresh();
    title("a", "one");
    title("b", "two");
    title("c");
    title("d", "one");
    const seen = [];
    while (now().canUndo) {
      now().undo();
      seen.push(now().plan.title);
    }
    expect(seen).toEqual(["c", "b", "a", demoPlan.title]);
  });

  test("after an undo the same key starts a new step and does not melt into the old one", () => {
    const { now, title } = fresh();
    title("a");
    title("b", "drag");
    now().undo();
    title("c", "drag");
    now().undo();
    expect(now().plan.title).toBe("a");
  });

  test("says what it would take back and what it would bring again", () => {
    const { now, title } = fresh();
    title("a");
    title("b");
    expect(now().undoLabel).toBe("call it b");
    now().undo();
    expect([now().undoLabel, now().redoLabel]).toEqual(["call it a", "call it b"]);
  });
});

describe("redo", () => {
  test("goes forward again, until a new edit takes the way away", () => {
    const { now, title } = fresh();
    title("a");
    title("b");
    now().undo();
    now().undo();
    now().redo();
    expect(now().plan.title).toBe("a");
    title("c");
    expect(now().canRedo).toBe(false);
    now().redo();
    expect(now().plan.title).toBe("c");
  });

  test("a merged edit takes the way forward away too", () => {
    const { now, title } = fresh();
    title("a", "drag");
    title("b", "other");
    now().undo();
    title("c", "other");
    expect(now().canRedo).toBe(false);
  });
});

test("an edit that changes nothing leaves no step", () => {
  const { now } = fresh();
  now().edit((plan) => plan, "nothing");
  expect(now().canUndo).toBe(false);
});

test("the verdict always belongs to the plan beside it", () => {
  const { now } = fresh();
  now().edit((plan) => ({ ...plan, frequency_MHz: -1 }), "break it");
  expect(now().verdict.ok).toBe(false);
  now().undo();
  expect(now().verdict.ok).toBe(true);
  now().redo();
  expect(now().verdict.ok).toBe(false);
});

test("opening another plan can be undone", () => {
  const { now, title } = fresh();
  title("mine");
  now().open({ ...demoPlan, title: "theirs" });
  now().undo();
  expect(now().plan.title).toBe("mine");
});

test("the history is long but not endless", () => {
  const { now, title } = fresh();
  for (let i = 0; i <= longestHistory + 5; i++) title(`${i}`);
  let steps = 0;
  while (now().canUndo) {
    now().undo();
    steps++;
  }
  expect(steps).toBe(longestHistory);
});
