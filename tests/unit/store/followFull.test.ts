import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { createStore } from "zustand/vanilla";
import { readPlan, type SavedPlan, sweepBandSmooth, withRadials, withSpacing } from "../../../engine/index.ts";
import { type Answer, noAnswer } from "../../../src/store/Answer.ts";
import { type AnswerModel, inModel } from "../../../src/store/answerModels.ts";
import { bandRequest } from "../../../src/store/bandRequest.ts";
import { createPlanStore } from "../../../src/store/createPlanStore.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { followPlan, markOld_ms, still_ms } from "../../../src/store/followPlan.ts";
import { fullPace } from "../../../src/store/fullPace.ts";
import { nextFrame } from "../../../src/store/heldForFrame.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import type { EngineAsk } from "../../../src/worker/EngineMessage.ts";
import { patience_ms } from "../../../src/worker/engineClient.ts";
import { okValue } from "../../support/okValue.ts";
import { heldWorkers } from "./heldWorker.ts";

/** The invented pair on two short radials each, where the full answer is quick and far from the preview. */
const few = (one: SavedPlan): SavedPlan => withRadials(one, { count: 2, length_m: 2 });
const plan: SavedPlan = { ...few(demoPlan), pins: demoPlan.pins!.map((pin) => ({ ...pin, plan: few(pin.plan) })) };

function truth(of: SavedPlan, model: AnswerModel) {
  const pin = plan.pins![0]!;
  const request = readoutRequest(of);
  return {
    readout: okValue(readPlan(inModel(of, model), request)),
    pin: okValue(readPlan(inModel(pin.plan, model), request)),
  };
}

/** However quick it is, the full answer waits until the plan is still. */
const unhurried = { ...fullPace, quick_ms: -1, fewRadials: -1 };

function setUp(first: SavedPlan = plan, pace = unhurried) {
  const plans = createPlanStore(first);
  const answers = createStore<Answer>(() => noAnswer);
  const shown: Answer[] = [];
  answers.subscribe((state) => void shown.push(state));
  const held = heldWorkers();
  const follower = followPlan(plans, answers, held.make, nextFrame, pace);
  const space = (spacing_m: number) => plans.getState().edit((p) => withSpacing(p, spacing_m), "move");
  /** What is asked and not answered, in whichever worker. */
  const asked = (kind: Kind) =>
    held.workers.flatMap((worker) =>
      worker.isGone ? [] : worker.asked.flatMap(({ ask }) => (kindOf(ask) === kind ? [{ worker, ask }] : [])),
    );
  const answer = (kind: Kind, took_ms?: number) => {
    const [next] = asked(kind);
    if (!next) throw new Error(`no ${kind} is asked for`);
    next.worker.answer(took_ms);
  };
  return { plans, follower, held, space, asked, answer, shown, now: () => answers.getState() };
}

type Kind = "preview" | "full" | Exclude<EngineAsk["kind"], "readouts">;

function kindOf(ask: EngineAsk): Kind {
  if (ask.kind !== "readouts") return ask.kind;
  return ask.plans[0]!.soilModel === "screen" ? "preview" : "full";
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("preview at once, full answer in its place", { timeout: 60_000 }, () => {
  test("at first both are asked for without delay; the preview shows as such until plan and baseline are full", () => {
    const { now, asked, answer } = setUp();
    expect([asked("preview").length, asked("full").length]).toEqual([1, 1]);
    answer("preview");
    expect(now()).toMatchObject({ state: "fresh", model: "preview", refining: { done: 0, total: 2 } });
    expect(now().readout).toEqual(truth(plan, "preview").readout);
    answer("full");
    expect(now()).toMatchObject({ model: "preview", refining: { done: 1, total: 2 } });
    answer("full");
    expect(now()).toMatchObject({ state: "fresh", model: "full-wave", refining: null });
    expect(now().readout).toEqual(truth(plan, "full-wave").readout);
    expect(now().pinReadouts["pin-1"]).toEqual(truth(plan, "full-wave").pin);
  });

  test("what is shown is never part by one model and part by the other", () => {
    const { shown, answer, asked, space, plans } = setUp();
    const until = (kind: "preview" | "full") => {
      while (asked(kind).length > 0) answer(kind);
    };
    answer("full");
    answer("preview");
    answer("full");
    space(5);
    answer("preview");
    space(6.5);
    vi.advanceTimersByTime(still_ms);
    answer("full");
    until("preview");
    plans.getState().undo();
    until("preview");
    vi.advanceTimersByTime(still_ms);
    until("full");
    plans.getState().undo();
    const models = new Set<string>();
    const known = new Map<string, ReturnType<typeof truth>>();
    for (const { readout, readoutPlan, pinReadouts, model } of shown) {
      if (!readout || !readoutPlan) continue;
      const key = `${model} ${readoutPlan.elements[1]!.forward_m}`;
      known.set(key, known.get(key) ?? truth(readoutPlan, model));
      models.add(key);
      expect(readout).toEqual(known.get(key)!.readout);
      expect(pinReadouts["pin-1"]).toEqual(known.get(key)!.pin);
    }
    expect([...models].sort()).toEqual([
      "full-wave -5",
      "full-wave -5.9",
      "full-wave -6.5",
      "preview -5",
      "preview -5.9",
    ]);
  });

  test("while the plan moves only previews are asked for; the full answer once it is still", () => {
    const { now, asked, answer, space } = setUp();
    answer("preview");
    answer("full");
    answer("full");
    for (let i = 1; i <= 5; i++) {
      space(5.9 + i / 10);
      vi.advanceTimersByTime(still_ms - 20);
      expect(asked("full")).toEqual([]);
      answer("preview");
      expect(now()).toMatchObject({ state: "fresh", model: "preview", refining: { done: 0, total: 1 } });
    }
    vi.advanceTimersByTime(20);
    expect(asked("full")).toHaveLength(1);
    answer("full");
    expect(now()).toMatchObject({ state: "fresh", model: "full-wave", refining: null });
  });

  test("a full answer that comes too late is not shown, but kept for when its plan comes back", () => {
    const { now, asked, answer, space, plans } = setUp();
    answer("preview");
    answer("full");
    answer("full");
    space(5);
    answer("preview");
    vi.advanceTimersByTime(still_ms);
    space(6.5);
    answer("preview");
    answer("full");
    expect(now()).toMatchObject({ model: "preview", refining: { done: 0, total: 1 } });
    expect(now().readoutPlan).toBe(plans.getState().plan);
    plans.getState().undo();
    expect(now()).toMatchObject({ state: "fresh", model: "full-wave", refining: null });
    expect(now().readout).toEqual(truth(plans.getState().plan, "full-wave").readout);
    expect([asked("preview"), asked("full")]).toEqual([[], []]);
  });

  test("a full answer outdated for long gives its worker up to the next; one that ends in time keeps it", () => {
    const { asked, answer, space } = setUp();
    answer("preview");
    answer("full");
    answer("full");
    space(5);
    vi.advanceTimersByTime(still_ms);
    const slow = asked("full")[0]!.worker;
    space(6.5);
    vi.advanceTimersByTime(patience_ms - 1);
    expect(slow.isGone).toBe(false);
    vi.advanceTimersByTime(1);
    expect(slow.isGone).toBe(true);
    const next = asked("full")[0]!.worker;
    expect(next).not.toBe(slow);
    space(6);
    vi.advanceTimersByTime(patience_ms - 1);
    next.answer();
    vi.advanceTimersByTime(10 * patience_ms);
    expect(next.isGone).toBe(false);
    expect(asked("full")[0]!.worker).toBe(next);
  });

  test("a plan of the preview is answered by it alone, and so is what it is compared to", () => {
    const { now, asked, answer } = setUp({ ...plan, soilModel: "screen" });
    answer("preview");
    vi.advanceTimersByTime(1000);
    expect(asked("full")).toEqual([]);
    expect(now()).toMatchObject({ state: "fresh", model: "preview", refining: null, previewOnly: [] });
    expect(now().pinReadouts["pin-1"]).toEqual(truth(plan, "preview").pin);
  });
});

describe("not waiting for the full answer", { timeout: 60_000 }, () => {
  test("the part that is done is told; stopped, the preview stays, until it is asked for again or the plan changes", () => {
    const { follower, now, asked, answer, space } = setUp();
    answer("preview");
    const [first] = asked("full");
    first!.worker.say({ id: first!.worker.asked[0]!.id, part: 0.3 });
    expect(now().refining).toEqual({ done: 0, total: 2, part: 0.3 });
    follower.stopFull();
    expect(first!.worker.isGone).toBe(true);
    vi.advanceTimersByTime(5000);
    expect(asked("full")).toEqual([]);
    expect(now()).toMatchObject({ state: "fresh", model: "preview", refining: null, isStopped: true });
    follower.goOn();
    expect(now().isStopped).toBe(false);
    answer("full");
    answer("full");
    expect(now()).toMatchObject({ model: "full-wave", refining: null });

    space(5.5);
    follower.stopFull();
    vi.advanceTimersByTime(5000);
    expect(asked("full")).toEqual([]);
    space(5.6);
    expect(now().isStopped).toBe(false);
    vi.advanceTimersByTime(still_ms);
    expect(asked("full")).toHaveLength(1);
  });
});

describe("few radials, lying otherwise", { timeout: 120_000 }, () => {
  test("are asked about last of all, belong to the plan they vary, and are gone with eight radials", () => {
    const { now, asked, answer, plans } = setUp();
    answer("preview");
    answer("full");
    answer("full");
    while (asked("band").length > 0) answer("band");
    while (asked("sample").length > 0) answer("sample");
    expect(now().layings).toBeNull();
    answer("layings");
    const { rows, plan: of } = now().layings!;
    expect(rows.map((row) => row.height_m)).toEqual([0, 0.02, -0.05]);
    const request = readoutRequest(plan);
    for (const { height_m, readout } of rows)
      expect(readout).toEqual(okValue(readPlan(withRadials(of, { height_m }), request)));
    plans.getState().edit((p) => withRadials(p, { count: 8 }), "more");
    vi.advanceTimersByTime(still_ms);
    while (asked("preview").length > 0) answer("preview");
    while (asked("full").length > 0) answer("full");
    while (asked("band").length > 0) answer("band");
    while (asked("sample").length > 0) answer("sample");
    expect(asked("layings")).toEqual([]);
    expect(now().layings).toBeNull();
  });
});

describe("radials that suit one model only", { timeout: 60_000 }, () => {
  test("none at all: the preview stays, and says why there is no more", () => {
    const { now, asked, answer } = setUp(withRadials(plan, { count: 0 }));
    answer("preview");
    vi.advanceTimersByTime(1000);
    expect(asked("full")).toEqual([]);
    expect(now()).toMatchObject({ state: "fresh", model: "preview", refining: null, problems: [] });
    expect(now().previewOnly[0]!.code).toBe("base-without-radials");
  });

  test("raised ones: the answer before stands, after a moment marked old, until the full one comes", () => {
    const { now, asked, answer, plans } = setUp();
    answer("preview");
    answer("full");
    answer("full");
    const before = now().readout;
    plans.getState().edit((p) => withRadials(p, { height_m: 2 }), "raise them");
    expect(asked("preview")).toEqual([]);
    expect(now()).toMatchObject({ state: "working", readout: before, problems: [] });
    vi.advanceTimersByTime(markOld_ms);
    expect(now()).toMatchObject({ state: "old", readout: before, problems: [], refining: { done: 0, total: 1 } });
    answer("full");
    expect(now()).toMatchObject({ state: "fresh", model: "full-wave", readoutPlan: plans.getState().plan });
    expect(now().readout).toEqual(truth(plans.getState().plan, "full-wave").readout);
    vi.advanceTimersByTime(10 * markOld_ms);
    expect(now().state).toBe("fresh");
  });
});

describe("the sweep in full", { timeout: 120_000 }, () => {
  test("follows the full readouts, one frequency at a time, breaks off for a newer plan and takes up where it was", () => {
    const { now, asked, answer, space, plans } = setUp();
    answer("preview");
    answer("band");
    expect(now().bandModel).toBe("preview");
    expect(asked("sample")).toEqual([]);
    answer("band");
    answer("full");
    answer("full");
    answer("sample");
    answer("sample");
    const third = asked("sample")[0]!.ask;
    space(5);
    answer("preview");
    // The solve in flight ends; then the new plan's sweeps come first, and its own full readout before a full sweep.
    answer("sample");
    expect(asked("sample")).toEqual([]);
    while (asked("band").length > 0) answer("band");
    expect(asked("sample")).toEqual([]);
    plans.getState().undo();
    vi.advanceTimersByTime(still_ms);
    const fourth = asked("sample")[0]!.ask;
    expect(fourth).not.toEqual(third);
    while (asked("sample").length > 0 && now().bandModel === "preview") answer("sample");
    expect(now().bandPlan).toBe(plan);
    expect(now().band).toEqual(okValue(sweepBandSmooth(inModel(plan, "full-wave"), bandRequest(plan))));
    // The pin's curve of the other model is gone until its own comes.
    expect(now().pinBands).toEqual({});
    while (asked("sample").length > 0) answer("sample");
    expect(now().pinBands["pin-1"]!.interpolated).toBeDefined();
  });
});

describe("a small field: the full answer alone, every frame of a drag", { timeout: 60_000 }, () => {
  const settled = (pace = fullPace) => {
    const all = setUp(plan, pace);
    all.answer("preview");
    all.answer("full");
    all.answer("full");
    return all;
  };

  test("no preview is asked for, every answer shown is full, and nothing says that one is coming", () => {
    const { asked, answer, space, shown, now, plans } = settled();
    shown.length = 0;
    for (const spacing_m of [7, 7.1, 7.2, 7.3]) {
      space(spacing_m);
      expect([asked("preview").length, asked("full").length]).toEqual([0, 1]);
      answer("full");
      expect(now()).toMatchObject({ state: "fresh", model: "full-wave", readoutPlan: plans.getState().plan });
      vi.advanceTimersByTime(16);
    }
    expect(now().readout).toEqual(truth(plans.getState().plan, "full-wave").readout);
    expect(shown.every((one) => one.model === "full-wave" && one.refining === null)).toBe(true);
  });

  test("an answer that comes a frame late is shown as what it is, and the newest follows", () => {
    const { asked, answer, space, now, plans } = settled();
    space(7);
    const first = plans.getState().plan;
    space(7.5);
    answer("full");
    expect(now()).toMatchObject({ state: "working", model: "full-wave", readoutPlan: first });
    expect(asked("full")).toHaveLength(1);
    answer("full");
    expect(now()).toMatchObject({ state: "fresh", readoutPlan: plans.getState().plan });
  });

  test("where the answer keeps the hand waiting, the preview steps in; the second time it stays in", () => {
    const { asked, answer, space, now } = settled();
    /** Never still for long, and no answer. */
    const moveFor = (from_m: number, ms: number) => {
      for (let t = 0; t < ms; t += still_ms / 2) {
        space(from_m + t / 1e4);
        vi.advanceTimersByTime(still_ms / 2);
      }
    };
    space(7);
    expect(asked("preview")).toEqual([]);
    moveFor(7.01, fullPace.standIn_ms);
    answer("preview");
    expect(now()).toMatchObject({ model: "preview", refining: { total: 1 } });
    while (asked("full").length > 0) answer("full");
    space(7.5);
    expect([asked("preview").length, asked("full").length]).toEqual([0, 1]);
    answer("full");
    expect(now()).toMatchObject({ state: "fresh", model: "full-wave", refining: null });
    space(8);
    moveFor(8.01, fullPace.standIn_ms);
    expect(asked("preview").length).toBeGreaterThan(0);
    while (asked("preview").length > 0) answer("preview");
    while (asked("full").length > 0) answer("full");
    space(8.5);
    expect([asked("preview").length, asked("full").length]).toEqual([1, 0]);
  });

  test("one late answer is no rule; where they are late one after the other, previews take their place", () => {
    const { asked, answer, space, now } = settled();
    let at_m = 7;
    const frames = (took_ms: number, upTo: number) => {
      let full = 0;
      for (; full < upTo; full++) {
        at_m += 0.01;
        space(at_m);
        if (asked("full").length === 0) break;
        answer("full", took_ms);
      }
      return full;
    };
    expect(frames(8, 10)).toBe(10);
    expect(frames(80, 7)).toBe(7);
    expect(frames(8, 10)).toBe(10);
    expect(frames(32, 20)).toBe(20);
    expect(frames(34, 20)).toBe(8);
    expect(asked("preview")).toHaveLength(1);
    // At rest the answer is quick again, and the next drag has it alone.
    answer("preview");
    vi.advanceTimersByTime(still_ms);
    answer("full", 8);
    expect(now()).toMatchObject({ state: "fresh", model: "full-wave" });
    expect(frames(8, 10)).toBe(10);
  });

  test("a field of many radials is not tried, until its answer was quick at rest", () => {
    const many = setUp(plan, { ...fullPace, fewRadials: 3 });
    many.answer("preview");
    many.answer("full", 9);
    many.answer("full", 9);
    many.space(7);
    expect([many.asked("preview").length, many.asked("full").length]).toEqual([1, 0]);
    many.answer("preview");
    vi.advanceTimersByTime(still_ms);
    many.answer("full", 7);
    many.space(7.1);
    expect([many.asked("preview").length, many.asked("full").length]).toEqual([0, 1]);
  });

  test("no full sweep is begun while the plan moves; at rest it is", () => {
    const { asked, answer, space } = settled();
    const sweepAll = () => {
      while (asked("band").length > 0) answer("band");
    };
    sweepAll();
    while (asked("sample").length > 0) answer("sample");
    for (let i = 0; i < 20; i++) {
      space(7 + i / 10);
      answer("full");
      sweepAll();
      expect(asked("sample")).toEqual([]);
      vi.advanceTimersByTime(still_ms / 2);
    }
    vi.advanceTimersByTime(10 * still_ms);
    while (asked("band").length > 0) answer("band");
    expect(asked("sample")).toHaveLength(1);
  });
});
