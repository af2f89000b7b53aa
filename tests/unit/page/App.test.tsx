import { cleanup, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { baselineOf, readPlan, type SavedPlan, withGround } from "../../../engine/index.ts";
import { App } from "../../../src/App.tsx";
import { signedFigure } from "../../../src/charts/figure.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import { answerStore } from "../../../src/store/useAnswer.ts";
import { planStore } from "../../../src/store/usePlan.ts";
import { besideWorker } from "../../../src/worker/besideWorker.ts";

/** The first-visit plan over perfect ground, where the real engine answers quickly. */
const plan: SavedPlan = {
  ...withGround(demoPlan, { kind: "perfect" }),
  pins: demoPlan.pins!.map((pin) => ({ ...pin, plan: withGround(pin.plan, { kind: "perfect" }) })),
};
/** Nothing here is about the SWR curve, and a sweep is thirty solves. */
function withoutSweeps() {
  const worker = besideWorker();
  const post = worker.postMessage;
  worker.postMessage = (request) => {
    if (request.ask.kind === "readouts") post(request);
  };
  return worker;
}
const blank = answerStore.getState();
/** Solves and drawings of the whole page, on a machine that may be busy. */
const patience = { timeout: 20_000 };

beforeEach(() => {
  planStore.getState().start(plan);
  answerStore.setState(blank);
  render(<App makeWorker={withoutSweeps} />);
});
afterEach(cleanup);

const headline = () => screen.getByRole("region", { name: "What this design does" });
/** Labels of figures only: the announcer repeats them for screen readers. */
const label = (text: RegExp) => within(headline()).getByText(text, { selector: "dt" });
const forward = () => label(/forward at/).nextElementSibling!.textContent;
const fresh = () => waitFor(() => expect(answerStore.getState().state).toBe("fresh"), patience);

/** The difference the headline should show, asked of the engine directly. */
function gained_dB(of: SavedPlan): number {
  const request = readoutRequest(of);
  const now = readPlan(of, request);
  const before = readPlan(baselineOf(of)!.plan, request);
  if (!now.ok || !before.ok) throw new Error("the test's own plans are not good");
  return now.value.path.forward_dBi - before.value.path.forward_dBi;
}

describe("the page", { timeout: 60_000 }, () => {
  test("leads with what the design gains over the pinned baseline at the path's elevation", async () => {
    await fresh();
    const gained = gained_dB(plan);
    expect(gained).toBeGreaterThan(2);
    expect(forward()).toBe(`${signedFigure(gained, 1)} dB`);
    expect(label(/forward at 8°, against One vertical/)).toBeDefined();
  });

  test("takes the reflector out in one press, says that nothing is gained, and brings the same one back", async () => {
    const user = userEvent.setup();
    await fresh();
    await user.click(screen.getByRole("button", { name: "Take reflector out" }));
    await fresh();
    expect(forward()).toBe("0.0 dB");
    expect(within(headline()).getByText(/heard just as before/)).toBeDefined();
    await user.click(within(headline()).getByRole("button", { name: "Add reflector" }));
    expect(planStore.getState().plan.elements).toEqual(plan.elements);
  });

  test("without a baseline says dBi, with the angle and the ground, and claims no gain", async () => {
    const user = userEvent.setup();
    await fresh();
    await user.click(screen.getByRole("button", { name: /One vertical/ }));
    await user.click(screen.getByRole("button", { name: "Stop comparing with this" }));
    await fresh();
    expect(forward()).toMatch(/ dBi$/);
    expect(label(/forward at 8°, over perfect ground/)).toBeDefined();
  });

  test("cautions beside the figure when the baseline stands on another frequency", async () => {
    await fresh();
    planStore.getState().edit((p) => ({ ...p, frequency_MHz: 10.15 }), "retune");
    await fresh();
    expect(within(headline()).getByText(/at 10\.120 MHz/)).toBeDefined();
  });

  test("what has to be put right stands in the headline, and the figures are marked as the last good ones", async () => {
    await fresh();
    const before = forward();
    planStore.getState().edit((p) => ({ ...p, frequency_MHz: 90 }), "spoil it");
    await waitFor(() => expect(headline().dataset.answer).toBe("old"));
    expect(within(headline()).getByText(/The frequency is 90 MHz/)).toBeDefined();
    expect(within(headline()).getByText("Last good answer.")).toBeDefined();
    expect(forward()).toBe(before);
  });

  test("undo and redo by the keys everybody knows", async () => {
    const user = userEvent.setup();
    planStore.getState().edit((p) => ({ ...p, remark: "one" }), "write a remark");
    await user.keyboard("{Control>}z{/Control}");
    expect(planStore.getState().plan).toBe(plan);
    await user.keyboard("{Control>}y{/Control}");
    expect(planStore.getState().plan.remark).toBe("one");
    await user.keyboard("{Control>}z{/Control}{Control>}{Shift>}z{/Shift}{/Control}");
    expect(planStore.getState().plan.remark).toBe("one");
  });

  test("undo in a field that is being typed in is left to the field", async () => {
    const user = userEvent.setup();
    planStore.getState().edit((p) => ({ ...p, remark: "one" }), "write a remark");
    await user.type(screen.getByLabelText("driven length"), "7");
    await user.keyboard("{Control>}z{/Control}");
    expect(planStore.getState().plan.remark).toBe("one");
    await user.keyboard("{Escape}{Control>}z{/Control}");
    expect(planStore.getState().plan.remark).toBe(plan.remark);
  });

  test("a panel takes the focus, and Escape gives it back to its button", async () => {
    const user = userEvent.setup();
    const button = screen.getByRole("button", { name: /10\.120 MHz/ });
    await user.click(button);
    expect(screen.getByRole("group", { name: "Band and frequency" }).contains(document.activeElement)).toBe(true);
    await user.keyboard("{Escape}");
    expect(screen.queryByRole("group", { name: "Band and frequency" })).toBeNull();
    expect(document.activeElement).toBe(button);
  });

  test("the menu goes by arrows and letters, and skips nothing", async () => {
    const user = userEvent.setup();
    const button = screen.getByRole("button", { name: "Plan" });
    button.focus();
    await user.keyboard("{ArrowDown}");
    expect(document.activeElement?.textContent).toContain("New from the example");
    await user.keyboard("s");
    expect(document.activeElement?.textContent).toContain("Save as a file");
    await user.keyboard("{End}");
    expect(document.activeElement?.textContent).toContain("Your earlier work");
    await user.keyboard("{ArrowDown}{Escape}");
    expect(document.activeElement).toBe(button);
  });

  test("another band moves the whole plan, lengths and pins with it, in one undo step", async () => {
    const user = userEvent.setup();
    await user.click(screen.getByRole("button", { name: /10\.120 MHz/ }));
    await user.selectOptions(screen.getByLabelText("Band"), "20 m");
    const { plan: moved, undo } = planStore.getState();
    expect(moved.band).toEqual({ label: "20 m", from_MHz: 14, to_MHz: 14.35 });
    const ratio = plan.frequency_MHz / moved.frequency_MHz;
    expect(moved.elements[1]!.forward_m).toBeCloseTo(plan.elements[1]!.forward_m * ratio, 3);
    expect(moved.pins![0]!.plan.elements[0]!.height_m).toBeCloseTo(plan.elements[0]!.height_m * ratio, 3);
    undo();
    expect(planStore.getState().plan).toBe(plan);
  });
});
