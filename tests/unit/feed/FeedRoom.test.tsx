import { cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { drivenOf, type SavedPlan, sweepBandSmooth, withGround, withoutReflector } from "../../../engine/index.ts";
import { FeedRoom } from "../../../src/rooms/feed/FeedRoom.tsx";
import { bandRequest } from "../../../src/store/bandRequest.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { answerStore } from "../../../src/store/useAnswer.ts";
import { planStore } from "../../../src/store/usePlan.ts";
import { besideWorker } from "../../../src/worker/besideWorker.ts";
import { okValue } from "../../support/okValue.ts";

/** Over perfect ground the real engine answers quickly. */
const plan: SavedPlan = withGround(demoPlan, { kind: "perfect" });
const blank = answerStore.getState();
const onClose = vi.fn();

/** The sweep that the page would have. */
function show(of: SavedPlan): void {
  planStore.getState().start(of);
  const band = okValue(sweepBandSmooth(of, bandRequest(of)));
  answerStore.setState({ ...blank, state: "fresh", band, bandPlan: of, readoutPlan: of, bandModel: "preview" });
  render(<FeedRoom makeWorker={besideWorker} onClose={onClose} />);
}
beforeEach(() => onClose.mockClear());
afterEach(() => {
  cleanup();
  answerStore.setState(blank);
});
const room = () => screen.getByRole("region", { name: "From rig to antenna" });
const field = (name: string) => within(room()).getByRole("textbox", { name });
const part = (name: string) => screen.getByRole("radio", { name });
const line = () => planStore.getState().plan.feedline;
const slow = { timeout: 30_000 };

describe("the feed room", { timeout: 60_000 }, () => {
  test("cable and length change the reading at the rig, are kept in the plan, and can be undone", async () => {
    const user = userEvent.setup();
    show(plan);
    expect(screen.getByText("Assumed until you say otherwise.")).toBeTruthy();
    const before = room().textContent;
    await user.selectOptions(screen.getByLabelText("cable"), "rg-58c");
    await user.clear(field("length of the line"));
    await user.type(field("length of the line"), "60 m{Enter}");
    expect(line()).toMatchObject({ cable: { kind: "listed", id: "rg-58c" }, length_m: 60 });
    expect(room().textContent).not.toBe(before);
    expect(screen.queryByText("Assumed until you say otherwise.")).toBeNull();
    expect(screen.getByText(/Matched, this length loses [12]\.\d\d dB/)).toBeTruthy();
    planStore.getState().undo();
    planStore.getState().undo();
    expect(line()).toBeUndefined();
  });

  test.each([
    ["length of the line", "0 m", /too small: at least 0\.10 m/],
    ["velocity factor", "1.2", /too large: at most 1\./],
    ["loss 1, dB per 100 m", "-3", /too small: at least 0\./],
    ["impedance", "0", /too small/],
    ["power at the rig", "ten", /not a unit|number/],
    ["highest SWR to take", "1", /too small/],
  ])(
    "%s of “%s” is refused at its field; what was typed stays and the plan is as it was",
    async (name, typed, says) => {
      const user = userEvent.setup();
      show(plan);
      await user.selectOptions(screen.getByLabelText("cable"), "own");
      const before = planStore.getState().plan;
      await user.clear(field(name));
      await user.type(field(name), `${typed}{Enter}`);
      expect(field(name).getAttribute("aria-invalid")).toBe("true");
      expect((field(name) as HTMLInputElement).value).toBe(typed);
      expect(screen.getByText(says)).toBeTruthy();
      expect(planStore.getState().plan).toBe(before);
    },
  );

  test("losses that no cable has are taken as near as can be, and that is said", async () => {
    const user = userEvent.setup();
    show(plan);
    await user.selectOptions(screen.getByLabelText("cable"), "own");
    await user.clear(field("loss 1, dB per 100 m"));
    await user.type(field("loss 1, dB per 100 m"), "9{Enter}");
    expect(screen.getByText(/No cable’s loss runs like these two/)).toBeTruthy();
  });

  test("a chosen match shows at the rig, and recutting the driven is an edit of the plan", async () => {
    const user = userEvent.setup();
    show(plan);
    await user.click(part("Matches"));
    await user.click(screen.getByRole("radio", { name: /coil across the feed/ }));
    expect(line()?.match).toBe("shunt-coil/shunt-coil");
    const height = () => drivenOf(planStore.getState().plan)!.height_m;
    const before = height();
    await user.click(screen.getByRole("button", { name: /the driven to suit/ }));
    expect(height()).not.toBe(before);
    planStore.getState().undo();
    await user.click(part("Line"));
    expect(screen.getByText(/SWR through the line, with coil across/)).toBeTruthy();
    await user.click(part("Impedance"));
    expect(screen.getByRole("region", { name: /Steps of the match/ })).toBeTruthy();
    await user.click(part("Matches"));
    await user.click(screen.getByRole("button", { name: "Take the match out" }));
    expect(line()?.match).toBeUndefined();
  });

  test("a match that can be made no more is said, and not lost", async () => {
    const user = userEvent.setup();
    show({ ...plan, feedline: { ...okFeedline, match: "l-network/series-coil/series-coil" } });
    await user.click(part("Matches"));
    expect(screen.getByText(/cannot be made for this feedpoint any more/)).toBeTruthy();
    expect(line()?.match).toBe("l-network/series-coil/series-coil");
    expect(within(screen.getByRole("region", { name: "The eight L networks" })).getAllByRole("listitem")).toHaveLength(
      8,
    );
  });

  test("the fed pair is solved by the engine and judged in words", async () => {
    const user = userEvent.setup();
    show(plan);
    await user.click(part("Fed pair"));
    const verdict = await screen.findByRole("region", { name: "Is the harness worth it?" }, slow);
    expect(verdict.textContent).toMatch(/At 8°, against one vertical: the reflector gives \+\d\.\d dB ahead/);
    const table = screen.getByRole("region", { name: "Ways to use the second vertical" });
    expect(within(table).getAllByRole("row")).toHaveLength(9);
    // A null behind: other currents, another answer.
    const before = verdict.textContent;
    await user.click(screen.getByRole("button", { name: /cancels straight behind/ }));
    expect(line()?.pair).toMatchObject({ magnitude: 1, phase_deg: 108 });
    await waitFor(
      () => expect(screen.getByRole("region", { name: "Is the harness worth it?" }).textContent).not.toBe(before),
      slow,
    );
  });

  test("reversal finds a load, draws the relays as they stand, and can be put into the plan", async () => {
    const user = userEvent.setup();
    show(plan);
    await user.click(part("Reversal"));
    await screen.findByRole("region", { name: "The load" }, slow);
    expect(
      screen.getByRole("img", {
        name: /front fed, back is the reflector. Front: feed contact closed\. Back: load contact closed/,
      }),
    ).toBeTruthy();
    await user.click(part("Reverse"));
    expect(screen.getByRole("img", { name: /Front: load contact closed\. Back: feed contact closed/ })).toBeTruthy();
    await user.click(screen.getByRole("button", { name: /Put it into the plan/ }));
    const [front, back] = planStore.getState().plan.elements;
    expect(back).toMatchObject({ id: "reflector", height_m: front!.height_m, base: { kind: "loaded" } });
    expect(planStore.getState().verdict.ok).toBe(true);
  });

  test("without a second vertical it says so, and asks the engine nothing", async () => {
    const user = userEvent.setup();
    show(withoutReflector(plan));
    await user.click(part("Fed pair"));
    expect(screen.getByText(/no second vertical to feed/)).toBeTruthy();
  });

  test("an engine that breaks is said, with a way to start it again", async () => {
    const user = userEvent.setup();
    planStore.getState().start(plan);
    render(
      <FeedRoom
        makeWorker={() => {
          throw new Error("no workers here");
        }}
        onClose={onClose}
      />,
    );
    await user.click(part("Fed pair"));
    const alert = await screen.findByRole("alert", {}, slow);
    expect(alert.textContent).toContain("no workers here");
    expect(within(alert).getByRole("button", { name: "Try again" })).toBeTruthy();
  });

  test("Escape closes it, unless a field takes it back first", async () => {
    show(plan);
    const length = field("length of the line");
    fireEvent.change(length, { target: { value: "30 m" } });
    fireEvent.keyDown(length, { key: "Escape" });
    expect(onClose).not.toHaveBeenCalled();
    fireEvent.keyDown(length, { key: "Escape" });
    expect(onClose).toHaveBeenCalledOnce();
  });
});

const okFeedline = {
  cable: { kind: "listed", id: "rg-213" },
  length_m: 20,
  sectionId: "rg-59b",
  power_W: 100,
  swrLimit: 2,
  coilQ: 200,
  capacitorQ: 1000,
} as const;
