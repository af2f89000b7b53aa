import { afterEach, describe, expect, test, vi } from "vitest";
import { type SavedPlan, withElementHeight, withSpacing } from "../../../engine/index.ts";
import { createTrials } from "../../../src/store/trials/createTrials.ts";
import { firstChoices } from "../../../src/store/trials/TrialChoices.ts";
import type { TrialKind } from "../../../src/store/trials/TrialRun.ts";
import { trialKey, trialStages } from "../../../src/store/trials/trialStages.ts";
import { besideTrialWorker } from "../../../src/worker/trial/besideTrialWorker.ts";
import type { TrialWorker } from "../../../src/worker/trial/TrialWorker.ts";
import { quickPlan } from "./trialPlan.ts";

const started: TrialWorker[] = [];
const make = () => {
  const worker = besideTrialWorker();
  started.push(worker);
  return worker;
};
afterEach(() => {
  for (const worker of started.splice(0)) worker.terminate();
});

/** Few radials, so that the full answer is quick too. */
const soilPlan: SavedPlan = {
  ...quickPlan,
  ground: { kind: "soil", relativePermittivity: 13, conductivity_SPerM: 0.005 },
  elements: quickPlan.elements.map((one) => ({ ...one, radials: { ...one.radials, count: 4 } })),
};

function setUp() {
  const trials = createTrials();
  trials.connect(make);
  const start = (kind: TrialKind, plan: SavedPlan) =>
    trials.start(kind, plan, trialKey(kind, plan, firstChoices, plan), trialStages(kind, plan, firstChoices));
  const run = (kind: TrialKind) => trials.store.getState().runs[kind];
  const isDone = (kind: TrialKind) => vi.waitFor(() => expect(run(kind)?.state).toBe("done"), wait);
  return { trials, start, run, isDone };
}
const wait = { timeout: 60_000, interval: 20 };

describe("trials outside the room", { timeout: 120_000 }, () => {
  test("over soil the quick picture comes first and the full one takes its place, never some of both", async () => {
    const { trials, start, run, isDone } = setUp();
    const seen: string[] = [];
    trials.store.subscribe(({ runs }) => {
      const { picture, pictureModel } = runs.band ?? {};
      if (picture?.kind === "band") seen.push(`${pictureModel} ${picture.isPreview}`);
    });
    start("band", soilPlan);
    expect(run("band")?.stages.map((stage) => stage.model)).toEqual(["preview", "full-wave"]);
    await isDone("band");
    expect([...new Set(seen)]).toEqual(["preview true", "full-wave false"]);
    expect(run("band")).toMatchObject({ isWhole: true, pictureModel: "full-wave", fault: null });
    expect(trials.store.getState()).toMatchObject({ going: null, busy: 0 });
  });

  test("another trial stops the one that goes, which keeps what it has and goes on when told", async () => {
    const { trials, start, run, isDone } = setUp();
    start("map", quickPlan);
    await vi.waitFor(() => expect(run("map")?.progress?.done).toBeGreaterThan(0), wait);
    start("pace", quickPlan);
    expect(run("map")).toMatchObject({ state: "stopped" });
    expect(trials.store.getState().going).toBe("pace");
    await isDone("pace");
    const pace = run("pace")?.picture;
    trials.goOn("map");
    await isDone("map");
    expect(run("map")?.picture?.kind).toBe("map");
    expect(run("pace")?.picture).toBe(pace);
  });

  test("stop, then go on: done in the end, and the workers at rest in between", async () => {
    const { trials, start, run, isDone } = setUp();
    start("map", quickPlan);
    await vi.waitFor(() => expect(trials.store.getState().busy).toBeGreaterThan(0), wait);
    trials.stop();
    expect(run("map")?.state).toBe("stopped");
    await vi.waitFor(() => expect(trials.store.getState().busy).toBe(0), wait);
    const before = run("map");
    await new Promise((done) => setTimeout(done, 100));
    expect(run("map")).toBe(before);
    // Had the workers gone on by themselves, nothing would be left to solve.
    const done: number[] = [];
    trials.store.subscribe(({ runs }) => void done.push(runs.map?.progress?.done ?? 0));
    trials.goOn("map");
    await isDone("map");
    expect(Math.max(...done)).toBeGreaterThan(0);
  });

  test("what cannot be done says why; an engine that breaks says so and can be started again", async () => {
    const { trials, start, run, isDone } = setUp();
    start("best", { ...quickPlan, elements: quickPlan.elements.slice(0, 1) });
    await vi.waitFor(() => expect(run("best")?.state).toBe("failed"), wait);
    expect(run("best")?.problems.length).toBeGreaterThan(0);
    start("pace", quickPlan);
    started.at(-1)!.onerror?.({ message: "out of memory" });
    expect(run("pace")).toMatchObject({ state: "failed", fault: "out of memory" });
    expect(trials.store.getState().going).toBeNull();
    trials.goOn("pace");
    await isDone("pace");
    expect(run("pace")?.fault).toBeNull();
  });
});

describe("what a result belongs to", () => {
  const key = (kind: TrialKind, plan: SavedPlan) => trialKey(kind, plan, firstChoices, quickPlan);
  const spaced = withSpacing(quickPlan, 4);
  const taller = withElementHeight(quickPlan, "reflector", 7.4);
  const driven = withElementHeight(quickPlan, "driven", 7.1);

  test("a walk holds wherever the reflector stands, a map also whatever its length; neither for another driven", () => {
    expect(key("pace", spaced)).toBe(key("pace", quickPlan));
    expect(key("pace", taller)).not.toBe(key("pace", quickPlan));
    expect(key("map", withSpacing(taller, 4))).toBe(key("map", quickPlan));
    for (const kind of ["pace", "map"] as const) expect(key(kind, driven)).not.toBe(key(kind, quickPlan));
  });

  test("everything else is of its plan alone; a title changes nothing", () => {
    for (const kind of ["best", "radials", "band", "tolerance"] as const) {
      expect(key(kind, spaced)).not.toBe(key(kind, quickPlan));
      expect(key(kind, { ...quickPlan, title: "another" })).toBe(key(kind, quickPlan));
    }
  });
});
