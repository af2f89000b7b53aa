import { cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { checkSavedPlan, readPlanFile, type SavedPlan, withGround, writePlanFile } from "../../../engine/index.ts";
import { BenchRoom } from "../../../src/rooms/bench/BenchRoom.tsx";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { planStore } from "../../../src/store/usePlan.ts";
import { besideWorker } from "../../../src/worker/besideWorker.ts";
import { okValue } from "../../support/okValue.ts";

/** Over perfect ground the real engine answers quickly. */
const plan: SavedPlan = withGround(demoPlan, { kind: "perfect" });
const onClose = vi.fn();
const slow = { timeout: 30_000 };

beforeEach(() => {
  onClose.mockClear();
  planStore.getState().start(plan);
  render(<BenchRoom makeWorker={besideWorker} onClose={onClose} />);
});
afterEach(cleanup);

const room = () => screen.getByRole("region", { name: "Paper and readings" });
const part = (name: string) => within(room()).getByRole("radio", { name });
const field = (name: string) => within(room()).getAllByRole("textbox", { name })[0]!;
const button = (name: string | RegExp) => within(room()).getByRole("button", { name });
const bench = () => planStore.getState().plan.bench;
const type = async (user: ReturnType<typeof userEvent.setup>, name: string, text: string) => {
  await user.clear(field(name));
  await user.type(field(name), text);
};

async function openStep(user: ReturnType<typeof userEvent.setup>, title: RegExp) {
  await user.click(part("Measuring"));
  await waitFor(() => expect(screen.getByRole("navigation", { name: "Steps" })).toBeTruthy(), slow);
  await user.click(within(screen.getByRole("navigation", { name: "Steps" })).getByRole("button", { name: title }));
}

describe("paper and readings", { timeout: 90_000 }, () => {
  test("a step says what is connected, what to expect, how near is near enough, and what to think of if it is not so", async () => {
    const user = userEvent.setup();
    await openStep(user, /Trim the driven/);
    const step = screen.getByRole("region", { name: /^Step 3/ });
    expect(step.textContent).toContain("Driven: meter at the base. Reflector: base open.");
    const table = within(step).getByRole("table", { name: /driven’s base/ });
    // Over perfect ground a thin quarter wave shows 36 Ω where X is 0: tests/published, this wire 36.05.
    const there = within(table).getByRole("rowheader", { name: "R there" }).parentElement!;
    expect(Number.parseFloat(within(there).getAllByRole("cell")[0]!.textContent!)).toBeCloseTo(36, 0);
    expect(within(there).getAllByRole("cell")[1]!.textContent).toMatch(/^± \d/);
    expect(within(step).getByRole("heading", { name: "If it is not so" })).toBeTruthy();
  });

  test("a reading typed at a step is held against it, is part of the plan and its file, and can be undone", async () => {
    const user = userEvent.setup();
    await openStep(user, /Trim the driven/);
    await type(user, "R read", "35");
    await type(user, "X read", "-12.5");
    await user.click(button("Keep this reading"));
    expect(bench()?.readings).toMatchObject([
      {
        state: "driven-alone",
        at: "base",
        lengths_m: { driven_m: 7.25, reflector_m: 7.6 },
        points: [{ frequency_MHz: 10.12, resistance_ohm: 35, reactance_ohm: -12.5 }],
      },
    ]);
    expect(screen.getByRole("columnheader", { name: "you read" })).toBeTruthy();
    const saved = okValue(readPlanFile(writePlanFile(planStore.getState().plan)));
    expect(saved.bench).toEqual(bench());
    planStore.getState().undo();
    expect(bench()).toBeUndefined();
  });

  test.each([
    ["R read", "-3", /too small/],
    ["R read", "ten", /not a unit|number/],
    ["X read", "1e9", /too large/],
    ["at the frequency", "0.2 MHz", /too small: at least 1\.000 MHz/],
  ])("%s of “%s” is refused at its field, and no reading is kept", async (name, typed, says) => {
    const user = userEvent.setup();
    await openStep(user, /Trim the driven/);
    await type(user, name, `${typed}{Enter}`);
    expect(field(name).getAttribute("aria-invalid")).toBe("true");
    expect((field(name) as HTMLInputElement).value).toBe(typed);
    expect(within(room()).getByText(says)).toBeTruthy();
    await user.click(button("Keep this reading"));
    expect(screen.getByRole("alert").textContent).toMatch(/^Still to be typed/);
    expect(bench()).toBeUndefined();
  });

  test("an analyser's file becomes a reading; a bad one is refused whole, by line", async () => {
    const user = userEvent.setup();
    await openStep(user, /Driven again/);
    const chooser = screen.getByLabelText("Reading from a .s1p file", { selector: "input" });
    const good = "! from a meter\r\n# mhz z ri r 50\r\n10.0\t0.9 -0.1\r\n10.12\t0.94 0.08\r\n";
    await user.upload(chooser, new File([good], "joined.s1p"));
    await waitFor(() => expect(bench()?.readings).toHaveLength(1));
    expect(bench()!.readings![0]!.points[1]).toMatchObject({ frequency_MHz: 10.12 });
    // Version 1 normalises Z to the reference: 0.94 × 50 Ω.
    expect(bench()!.readings![0]!.points[1]!.resistance_ohm).toBeCloseTo(47, 9);
    const before = bench();
    const bad = "# MHz S MA R 50\n10.0 0.2 30\n10.1 nonsense 3\n10.2 0.3\n";
    await user.upload(chooser, new File([bad], "broken.s1p"));
    const alert = await screen.findByRole("alert");
    expect(alert.textContent).toContain("broken.s1p was not taken; nothing has changed.");
    expect(alert.textContent).toMatch(/Line 3: .*Line 4: /);
    expect(bench()).toBe(before);
  });

  test("a reading through a cable is asked for its cable, and not used until there is one", async () => {
    const user = userEvent.setup();
    await openStep(user, /Trim the driven/);
    await user.click(screen.getByRole("checkbox", { name: /a cable stands between/ }));
    expect(bench()?.lead).toMatchObject({ cable: { kind: "listed" } });
    await user.click(screen.getByRole("checkbox", { name: "the next reading is taken through the cable" }));
    await type(user, "R read", "35");
    await type(user, "X read", "-12.5");
    await user.click(button("Keep this reading"));
    expect(bench()?.readings?.[0]?.at).toBe("lead");
    await user.click(screen.getByRole("checkbox", { name: /a cable stands between/ }));
    expect(screen.getByText(/it is not used until one is/)).toBeTruthy();
    expect(screen.queryByRole("columnheader", { name: "you read" })).toBeNull();
    expect(checkSavedPlan(planStore.getState().plan).ok).toBe(true);
  });

  test("the log: a line is added with today's date, written in, kept and taken out, each undone by itself", async () => {
    const user = userEvent.setup();
    await user.click(part("Log"));
    await user.click(button("Add an entry"));
    expect(bench()?.log).toHaveLength(1);
    await user.selectOptions(within(room()).getByRole("combobox", { name: "ground" }), "frozen");
    await type(user, "R there", "41.5{Enter}");
    await type(user, "what was done", "cut 20 mm off{Enter}");
    expect(bench()!.log![0]).toMatchObject({ ground: "frozen", resistance_ohm: 41.5, action: "cut 20 mm off" });
    fireEvent.change(screen.getByLabelText("day"), { target: { value: "2026-02-03" } });
    fireEvent.blur(screen.getByLabelText("day"));
    expect(bench()!.log![0]!.date).toBe("2026-02-03");
    expect(
      within(screen.getByRole("table", { name: /^The log/ })).getByText("2026-02-03", { exact: false }),
    ).toBeTruthy();
    // A figure that was not taken is absent, not 0.
    await type(user, "R there", "{Enter}");
    expect("resistance_ohm" in bench()!.log![0]!).toBe(false);
    await user.click(button("Take this entry out"));
    expect(bench()).toBeUndefined();
    planStore.getState().undo();
    expect(bench()!.log).toHaveLength(1);
  });

  test("what is read drives the plan: three readings, a correction, one step to undo", async () => {
    const user = userEvent.setup();
    // As if both wires acted 0.5 % longer and each ground had 5 Ω: rough figures, only to have something to fit.
    for (const [step, r, x] of [
      [/Trim the driven/, "40.5", "1.2"],
      [/Trim the reflector/, "47", "31"],
      [/Driven again/, "38", "12"],
    ] as const) {
      await openStep(user, step);
      await type(user, "R read", r);
      await type(user, "X read", x);
      await user.click(button("Keep this reading"));
    }
    await user.click(part("Correction"));
    await waitFor(() => expect(button("Use the corrected plan")).toBeTruthy(), { timeout: 60_000 });
    const before = planStore.getState().plan;
    await user.click(button("Use the corrected plan"));
    const now = planStore.getState().plan;
    expect(now.elements[0]!.height_m).not.toBe(before.elements[0]!.height_m);
    expect(now.elements[0]!.baseSeries!.resistance_ohm).toBeGreaterThan(1);
    expect(now.bench!.asMeasured!.elements).toHaveLength(2);
    expect(now.pins!.at(-1)).toMatchObject({ name: "As planned" });
    expect(checkSavedPlan(now).ok).toBe(true);
    planStore.getState().undo();
    expect(planStore.getState().plan).toBe(before);
    planStore.getState().redo();
    await user.click(button("Take the correction back"));
    expect(planStore.getState().plan.elements).toEqual(before.elements);
  });

  test("Escape closes the room, but not from a field that still has something to take back", async () => {
    const user = userEvent.setup();
    await user.click(part("Log"));
    await user.click(button("Add an entry"));
    await type(user, "R there", "12");
    await user.keyboard("{Escape}");
    expect(onClose).not.toHaveBeenCalled();
    expect((field("R there") as HTMLInputElement).value).toBe("");
    await user.keyboard("{Escape}");
    expect(onClose).toHaveBeenCalledOnce();
  });
});
