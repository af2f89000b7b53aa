import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { readPlanFile, withSpacing, writePlanFile } from "../../../engine/index.ts";
import { createPlanStore } from "../../../src/store/createPlanStore.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { keepWork } from "../../../src/store/keepWork.ts";
import { openPlan } from "../../../src/store/openPlan.ts";
import { readSettings } from "../../../src/store/readSettings.ts";
import { restoreWork } from "../../../src/store/restoreWork.ts";
import { shelf } from "../../../src/store/shelf.ts";

/** Storage in memory that can be full or switched off, as browsers' can. */
function storage() {
  const held = new Map<string, string>();
  const state = { isFull: false, isOff: false };
  const area = {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (state.isFull) throw new DOMException("over quota", "QuotaExceededError");
      held.set(key, text);
    },
    removeItem: (key: string) => void held.delete(key),
  };
  const of = () => {
    if (state.isOff) throw new DOMException("no", "SecurityError");
    return area as unknown as Storage;
  };
  return { held, state, shelf: shelf(of) };
}

const key = "hindwire.v1.plan";
const newer = JSON.stringify({ ...demoPlan, version: 2, novelty: { kept: true } });

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function setUp() {
  const { held, state, shelf: ours } = storage();
  const plans = createPlanStore(demoPlan);
  const troubles: string[] = [];
  const keeper = keepWork(plans, ours, (why) => troubles.push(why));
  const rename = (title: string) => plans.getState().edit((plan) => ({ ...plan, title }), "rename");
  return { held, state, ours, plans, troubles, keeper, rename };
}

describe("autosave", () => {
  test("writes once for a burst of edits, and what it wrote comes back", () => {
    const { held, ours, rename } = setUp();
    rename("a");
    rename("b");
    expect(held.has(key)).toBe(false);
    vi.advanceTimersByTime(1000);
    expect(restoreWork(ours).plan?.title).toBe("b");
  });

  test("leaving the page writes at once", () => {
    const { held, keeper, rename } = setUp();
    rename("last word");
    keeper.flush();
    expect(held.get(key)).toContain("last word");
  });

  test("an endless drag is still written while it goes on", () => {
    const { held, rename } = setUp();
    for (let i = 0; i < 20; i++) {
      rename(`${i}`);
      vi.advanceTimersByTime(50);
    }
    expect(held.has(key)).toBe(true);
  });

  test("a full store is said once, in words, and again only after it had worked in between", () => {
    const { state, troubles, rename } = setUp();
    state.isFull = true;
    for (const title of ["a", "b"]) {
      rename(title);
      vi.advanceTimersByTime(1000);
    }
    expect(troubles).toEqual(["this browser's store for local pages is full"]);
    state.isFull = false;
    rename("c");
    vi.advanceTimersByTime(1000);
    state.isFull = true;
    rename("d");
    vi.advanceTimersByTime(1000);
    expect(troubles).toHaveLength(2);
  });

  test("a store that is switched off is said and throws nothing", () => {
    const { state, troubles, rename, ours } = setUp();
    state.isOff = true;
    rename("a");
    vi.advanceTimersByTime(1000);
    expect(troubles).toEqual(["this browser does not let the page keep anything"]);
    expect(restoreWork(ours)).toEqual({ plan: null, unreadable: null, mayKeep: true });
  });

  test("an unfinished plan comes back as it was left, problems and all", () => {
    const { ours, plans } = setUp();
    plans.getState().edit((plan) => withSpacing(plan, 0), "break it");
    expect(plans.getState().verdict.ok).toBe(false);
    vi.advanceTimersByTime(1000);
    expect(restoreWork(ours).plan).toEqual(plans.getState().plan);
  });
});

describe("what this page cannot read", () => {
  test("a newer page's plan is put aside to the letter, and autosave does not touch it", () => {
    const { held, ours, rename } = setUp();
    held.set(key, newer);
    const restored = restoreWork(ours);
    expect(restored.plan).toBeNull();
    expect(restored.unreadable?.why).toContain("version 2");
    rename("new work");
    vi.advanceTimersByTime(1000);
    expect(held.get("hindwire.v1.aside")).toBe(newer);
  });

  test("a second one does not push out the first", () => {
    const { held, ours } = setUp();
    for (const text of [newer, "{ cut off"]) {
      held.set(key, text);
      restoreWork(ours);
      restoreWork(ours);
    }
    expect([held.get("hindwire.v1.aside"), held.get("hindwire.v1.aside-2")]).toEqual([newer, "{ cut off"]);
    expect(held.has("hindwire.v1.aside-3")).toBe(false);
  });

  test("when there is no room to put it aside, autosave is told to keep its hands off", () => {
    const { held, state, ours } = setUp();
    held.set(key, newer);
    state.isFull = true;
    expect(restoreWork(ours).mayKeep).toBe(false);
    expect(held.get(key)).toBe(newer);
  });

  test("a plan of the right version with a field of the wrong type is not let onto the page", () => {
    const { held, ours } = setUp();
    held.set(key, JSON.stringify({ ...demoPlan, elements: "two" }));
    expect(restoreWork(ours).plan).toBeNull();
  });
});

describe("opening something else", () => {
  test("keeps the work it replaces as an undo step and on the shelf", () => {
    const { held, ours, plans, rename } = setUp();
    rename("mine");
    const theirs = { ...demoPlan, title: "theirs" };
    expect(openPlan(plans.getState(), ours, readPlanFile(writePlanFile(theirs)), "open a file")).toBe(true);
    expect(plans.getState().plan.title).toBe("theirs");
    expect(held.get("hindwire.v1.earlier")).toContain("mine");
    plans.getState().undo();
    expect(plans.getState().plan.title).toBe("mine");
  });

  test("a file that cannot be read changes nothing", () => {
    const { held, ours, plans } = setUp();
    expect(openPlan(plans.getState(), ours, readPlanFile("{"), "open a file")).toBe(false);
    expect(plans.getState().plan).toBe(demoPlan);
    expect(held.size).toBe(0);
  });
});

test("settings are read part by part: one that is spoilt does not take the other with it", () => {
  expect(readSettings('{"theme":"dark","units":"cubits"}')).toEqual({ theme: "dark", units: "metric" });
  expect(readSettings("{")).toEqual({ theme: "auto", units: "metric" });
  expect(readSettings(null)).toEqual({ theme: "auto", units: "metric" });
});
