import { afterEach, describe, expect, test, vi } from "vitest";
import { createStore } from "zustand/vanilla";
import { readPlan, type SavedPlan, withoutReflector, withSpacing } from "../../../engine/index.ts";
import { type Answer, noAnswer } from "../../../src/store/Answer.ts";
import { createPlanStore } from "../../../src/store/createPlanStore.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { slowSweepPace_ms, sweepPace_ms } from "../../../src/store/followBands.ts";
import { followPlan, still_ms } from "../../../src/store/followPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import { shortageStore } from "../../../src/store/shortageStore.ts";
import { heldWorkers } from "./heldWorker.ts";

afterEach(() => {
  vi.useRealTimers();
  shortageStore.setState({ isShort: false });
});

/** Over perfect ground, where a solve is quick. */
const plan: SavedPlan = {
  ...demoPlan,
  ground: { kind: "perfect" },
  pins: demoPlan.pins!.map((pin) => ({ ...pin, plan: { ...pin.plan, ground: { kind: "perfect" } } })),
};

function setUp() {
  const plans = createPlanStore(plan);
  const answers = createStore<Answer>(() => noAnswer);
  const held = heldWorkers();
  const follower = followPlan(plans, answers, held.make);
  const space = (spacing_m: number) => plans.getState().edit((p) => withSpacing(p, spacing_m), "move", "drag");
  return { plans, answers, held, follower, space, now: () => answers.getState() };
}

/** What the engine says when asked directly, past store and worker. */
function truth(of: SavedPlan) {
  const read = readPlan(of, readoutRequest(of));
  if (!read.ok) throw new Error("the test's own plan is not good");
  return read.value;
}

// The two tests with sweeps in them are sixty solves each: seconds on a busy machine.
describe("an answer belongs to its plan", { timeout: 30_000 }, () => {
  test("the first answer brings the plan's figures and the pin's together, then both sweeps", () => {
    const { now, held } = setUp();
    expect(now()).toMatchObject({ state: "working", readout: null });
    held.workers[0]!.answer();
    expect(now().state).toBe("fresh");
    expect(now().readout!.path).toEqual(truth(plan).path);
    expect(now().pinReadouts["pin-1"]!.path).toEqual(truth({ ...plan.pins![0]!.plan, interest: plan.interest! }).path);
    expect(now().band).toBeNull();
    held.answerAll();
    expect(now().band!.feeds[0]!.swr50).toHaveLength(now().band!.frequency_MHz.length);
    expect(now().pinBands["pin-1"]).toBeDefined();
  });

  test("while a drag outruns the engine, what is shown names the plan it belongs to and is not called fresh", () => {
    const { now, held, space, plans } = setUp();
    held.answerReadouts();
    space(8);
    const passed = plans.getState().plan;
    space(7);
    space(6);
    expect(now().state).toBe("working");
    held.workers[0]!.answer();
    expect(now().readoutPlan).toBe(passed);
    expect(now().readout!.path).toEqual(truth(passed).path);
    expect(now().state).toBe("working");
    held.answerReadouts();
    expect(now().state).toBe("fresh");
    expect(now().readoutPlan).toBe(plans.getState().plan);
    expect(now().readout!.path).toEqual(truth(plans.getState().plan).path);
  });

  test("a drag that outran the engine once has each plan solved once all the same", () => {
    const { held, space, now, plans } = setUp();
    held.answerReadouts();
    const [prompt] = held.workers;
    const spacings: unknown[] = [];
    const answer = () => {
      const [request] = prompt!.asked;
      if (request?.ask.kind === "readouts")
        spacings.push(...request.ask.plans.map((one) => JSON.stringify(one.elements)));
      return prompt!.answer();
    };
    space(8);
    for (const spacing_m of [7.9, 7.8, 7.7, 7.6]) {
      space(spacing_m);
      answer();
    }
    while (answer());
    expect(now().readoutPlan).toBe(plans.getState().plan);
    expect(spacings).toHaveLength(5);
    expect(new Set(spacings).size).toBe(5);
  });

  test("a sweep that comes late is shown with the plan it was made for; the next one waits for its pace", async () => {
    const { now, held, space, plans } = setUp();
    held.workers[0]!.answer();
    const before = plans.getState().plan;
    space(5);
    held.workers[1]!.answer();
    expect(now().bandPlan).toBe(before);
    held.answerReadouts();
    expect(now().bandPlan).toBe(before);
    await new Promise((later) => setTimeout(later, sweepPace_ms + 50));
    held.answerAll();
    expect(now().bandPlan).toBe(plans.getState().plan);
  });

  test("in a drag a sweep that is done brings no other before its pace, though all figures are fresh", () => {
    vi.useFakeTimers();
    const { held, space, plans, now } = setUp();
    held.answerAll();
    vi.advanceTimersByTime(sweepPace_ms);
    const sweeps = held.workers[1]!;
    space(8);
    held.answerReadouts();
    space(7);
    held.answerReadouts();
    expect(sweeps.asked).toHaveLength(1);
    sweeps.answer();
    expect(sweeps.asked).toHaveLength(0);
    // The hand is still: what is missing is no longer in the way of anything.
    vi.advanceTimersByTime(still_ms);
    held.answerAll();
    expect(now().bandPlan).toBe(plans.getState().plan);
  });

  test("where frames are short sweeps follow at the slower pace", () => {
    vi.useFakeTimers();
    shortageStore.setState({ isShort: true });
    const { held, space } = setUp();
    held.answerAll();
    vi.advanceTimersByTime(slowSweepPace_ms);
    const sweeps = held.workers[1]!;
    let asked = 0;
    for (let i = 1; i <= 60; i++) {
      space(7 + i / 100);
      held.answerReadouts();
      vi.advanceTimersByTime(1000 / 60);
      if (sweeps.asked.length > 0 && sweeps.answer()) asked++;
    }
    expect(asked).toBe(1);
  });

  test("undo to a plan that was solved needs no engine", () => {
    const { now, held, space, plans } = setUp();
    held.answerReadouts();
    space(7);
    held.answerReadouts();
    plans.getState().undo();
    expect(now().state).toBe("fresh");
    expect(now().readoutPlan).toBe(plan);
  });

  test("a new title is no new question", () => {
    const { now, held, plans } = setUp();
    held.answerReadouts();
    plans.getState().edit((p) => ({ ...p, title: "other" }), "rename");
    expect(held.workers[0]!.asked).toEqual([]);
    expect(now().state).toBe("fresh");
  });
});

describe("a plan that is not good", () => {
  const breakIt = (p: SavedPlan): SavedPlan => withSpacing(p, 0);

  test("keeps the last good answer, marked old, with what has to be put right", () => {
    const { now, held, plans } = setUp();
    held.answerReadouts();
    const good = now().readout;
    plans.getState().edit(breakIt, "break it");
    expect(now()).toMatchObject({ state: "old", readout: good, readoutPlan: plan });
    expect(now().problems.map((problem) => problem.code)).toEqual(["elements-overlap"]);
  });

  test("an answer for the good plan before it arrives late and stays old", () => {
    const { now, held, space, plans } = setUp();
    held.answerReadouts();
    space(7);
    plans.getState().edit(breakIt, "break it");
    held.answerReadouts();
    expect(now().state).toBe("old");
    expect(now().problems).not.toEqual([]);
  });

  test("put right, it is fresh again and the problems are gone", () => {
    const { now, held, plans } = setUp();
    held.answerReadouts();
    plans.getState().edit(breakIt, "break it");
    plans.getState().edit((p) => withoutReflector(p), "take it out");
    held.answerReadouts();
    expect(now()).toMatchObject({ state: "fresh", problems: [] });
  });
});

describe("an engine that breaks", () => {
  test("is said, leaves the last answer marked old, and can be tried again", () => {
    const { now, held, space, follower, plans } = setUp();
    held.answerReadouts();
    space(7);
    held.workers[0]!.onerror?.({ message: "out of memory" });
    expect(now()).toMatchObject({ state: "old", fault: "out of memory", readoutPlan: plan });
    space(6);
    expect(now().state).toBe("old");
    follower.retry();
    held.answerReadouts();
    expect(now()).toMatchObject({ state: "fresh", fault: null });
    expect(now().readoutPlan).toBe(plans.getState().plan);
  });

  test("a stopped follower asks nothing more and ends its workers", () => {
    const { held, space, follower } = setUp();
    held.answerReadouts();
    follower.stop();
    space(7);
    expect(held.workers.map((worker) => worker.isGone)).toEqual([true, true]);
    expect(held.workers[0]!.asked).toEqual([]);
  });
});
