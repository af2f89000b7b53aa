import { cleanup, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { drivenOf, spacingOf, withElementHeight, withoutReflector } from "../../../engine/index.ts";
import { TrialsRoom } from "../../../src/rooms/trials/TrialsRoom.tsx";
import { firstChoices } from "../../../src/store/trials/TrialChoices.ts";
import { trialChoicesStore } from "../../../src/store/trials/useTrialChoices.ts";
import { trials } from "../../../src/store/trials/useTrials.ts";
import { planStore } from "../../../src/store/usePlan.ts";
import { besideTrialWorker } from "../../../src/worker/trial/besideTrialWorker.ts";
import { quickPlan } from "./trialPlan.ts";

const onClose = vi.fn();
const slow = { timeout: 60_000 };

beforeEach(() => {
  onClose.mockClear();
  trials.store.setState({ runs: {}, going: null, busy: 0 });
  trialChoicesStore.setState({ ...firstChoices, pace: { ...firstChoices.pace, from_wl: 0.1, to_wl: 0.3 } });
  trials.connect(besideTrialWorker);
  planStore.getState().start(quickPlan);
});
afterEach(cleanup);

const room = () => screen.getByRole("region", { name: "Trials" });
const press = (name: string | RegExp) => userEvent.click(within(room()).getByRole("button", { name }));
const plan = () => planStore.getState().plan;
const walked = () => within(room()).findByRole("button", { name: "Walk it again" }, slow);
const marker = () => within(room()).getByRole("slider", { name: "Front to back: reflector at" });

describe("the room of trials", { timeout: 120_000 }, () => {
  test("a walk: words, charts, how exact; the marker moves the reflector, a run of keys as one step", async () => {
    const user = userEvent.setup();
    render(<TrialsRoom onClose={onClose} />);
    await press("Walk it");
    await walked();
    expect(within(room()).getByText(/^Quietest straight back at \d/)).toBeTruthy();
    expect(
      within(room()).getByText(/^Solved over perfect ground: through \d+ solves; \d+ more beside them were off by/),
    ).toBeTruthy();
    expect(within(room()).getAllByRole("figure")).toHaveLength(4);
    expect(marker().getAttribute("aria-valuenow")).toBe("590");
    marker().focus();
    await user.keyboard("{ArrowLeft}{ArrowLeft}{ArrowLeft}");
    expect(spacingOf(plan())).toBeCloseTo(5.87, 9);
    // The walk is still of this plan: only the reflector has moved along it.
    expect(within(room()).queryByText(/^Of an earlier plan/)).toBeNull();
    planStore.getState().undo();
    expect(spacingOf(plan())).toBeCloseTo(5.9, 9);
    expect(planStore.getState().canUndo).toBe(false);
  });

  test("before it is started each part says what will come of it, and no longer once it is", async () => {
    render(<TrialsRoom onClose={onClose} />);
    const said: string[] = [];
    for (const part of ["Map", "Find best", "Band", "Tolerance", "Walk"]) {
      await userEvent.click(within(room()).getByRole("radio", { name: part }));
      said.push(within(room()).getByText(/; takes about .+ seconds?\.$/).textContent!);
    }
    expect(new Set(said).size).toBe(5);
    await press("Walk it");
    expect(within(room()).queryByText(/; takes about/)).toBeNull();
    await walked();
    expect(within(room()).queryByText(/; takes about/)).toBeNull();
  });

  test("put at the quietest spacing, the marker reads what the words say", async () => {
    render(<TrialsRoom onClose={onClose} />);
    await press("Walk it");
    await walked();
    const said = within(room()).getByText(/^Quietest straight back at/).textContent!;
    const [, spacing, , frontToBack] = said.match(/at ([\d.]+) m \(([\d.]+) λ\): front to back ([\d.]+) dB/)!;
    await press(/^Put the reflector at/);
    // Reflectors are put to the half centimetre, words to the centimetre.
    expect(Math.abs(spacingOf(plan())! - Number(spacing))).toBeLessThan(0.0101);
    expect(marker().getAttribute("aria-valuetext")).toContain(`straight back ${frontToBack} dB`);
  });

  test("when the plan moves on, the result says what it is of, and that plan can be had back", async () => {
    render(<TrialsRoom onClose={onClose} />);
    await press("Walk it");
    await walked();
    planStore.getState().edit((p) => withElementHeight(p, "driven", 7), "cut the driven");
    const note = await within(room()).findByText(/^Of an earlier plan: driven length 7\.25 m, now 7\.00 m\.$/);
    expect(note).toBeTruthy();
    expect(within(room()).getByRole("button", { name: "Walk it" })).toBeTruthy();
    await press("Go back to that plan");
    expect(drivenOf(plan())?.height_m).toBe(7.25);
    await waitFor(() => expect(within(room()).queryByText(/^Of an earlier plan/)).toBeNull());
    planStore.getState().undo();
    expect(drivenOf(plan())?.height_m).toBe(7);
  });

  test("a result outlives the room, and so does a trial that runs", async () => {
    const { unmount } = render(<TrialsRoom onClose={onClose} />);
    await press("Walk it");
    unmount();
    await waitFor(() => expect(trials.store.getState().runs.pace?.state).toBe("done"), slow);
    render(<TrialsRoom onClose={onClose} />);
    expect(within(room()).getByText(/^Quietest straight back at \d/)).toBeTruthy();
  });

  test("without a reflector there is nothing to walk, and it says so", () => {
    planStore.getState().start(withoutReflector(quickPlan));
    render(<TrialsRoom onClose={onClose} />);
    expect(within(room()).getByText("This plan has no reflector; add one in the Yard.")).toBeTruthy();
    expect(within(room()).getByRole("button", { name: "Walk it" })).toHaveProperty("disabled", true);
  });

  test("fields refuse what cannot be, and a walk the wrong way about is not begun", async () => {
    const user = userEvent.setup();
    render(<TrialsRoom onClose={onClose} />);
    const from = within(room()).getByRole("textbox", { name: "walk from" });
    await user.clear(from);
    await user.type(from, "20 m{Enter}");
    expect(within(room()).getByText(/too large/)).toBeTruthy();
    expect(trialChoicesStore.getState().pace.from_wl).toBe(0.1);
  });

  test("all weights at nothing: the search fails in words, at once", async () => {
    trialChoicesStore.setState({
      best: { ...firstChoices.best, weights: { forward: 0, back: 0, rear: 0, swr: 0 } },
    });
    const user = userEvent.setup();
    render(<TrialsRoom onClose={onClose} />);
    await user.click(within(room()).getByRole("radio", { name: "Find best" }));
    await press("Find the best");
    expect(await within(room()).findByRole("alert", undefined, slow)).toHaveProperty("textContent");
    expect(within(room()).getByRole("alert").textContent).toMatch(/weight/i);
  });

  test("Escape closes", async () => {
    render(<TrialsRoom onClose={onClose} />);
    room().focus();
    await userEvent.keyboard("{Escape}");
    expect(onClose).toHaveBeenCalledTimes(1);
  });
});
