import { act, cleanup, fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { SavedPlan } from "../../../engine/index.ts";
import { reflectorOf, spacingOf } from "../../../engine/index.ts";
import { DesignBar } from "../../../src/headline/DesignBar.tsx";
import { Yard } from "../../../src/rooms/yard/Yard.tsx";
import { planStore } from "../../../src/store/usePlan.ts";
import { settingsStore } from "../../../src/store/useSettings.ts";
import { driven, reflector, yardPlan } from "./yardPlan.ts";

// A drawing of three hundred parts takes jsdom long on a busy machine; how fast it is in a browser is not asked here.
vi.setConfig({ testTimeout: 30_000 });

const plan = () => planStore.getState().plan;
// By label, not by role: working out every role and name of a drawing takes jsdom most of a second.
const slider = (name: string) => screen.getByLabelText(name, { selector: "[role=slider]" });
const field = (name: string) => screen.getByLabelText<HTMLInputElement>(name, { selector: "input" });

function open(saved: SavedPlan = yardPlan()) {
  planStore.getState().start(saved);
  return render(
    <>
      <DesignBar />
      <Yard />
    </>,
  );
}

/** Where a handle stands, from its own transform. */
function placeOf(handle: Element): { x: number; y: number } {
  const [x, y] = (/translate\((\S+) (\S+)\)/.exec(handle.getAttribute("transform") ?? "") ?? []).slice(1).map(Number);
  return { x: x!, y: y! };
}

/** The scale of the view from above, from two places whose distance on the ground is known. */
function pxPerM(container: HTMLElement): number {
  const back = placeOf(slider("Spacing of the reflector"));
  const marks = [...container.querySelectorAll("g[transform]")];
  const front = placeOf(marks.find((g) => g.querySelector(":scope > .yard-dot") && !g.getAttribute("role"))!);
  return Math.hypot(front.x - back.x, front.y - back.y) / spacingOf(plan())!;
}

function enter(input: HTMLInputElement, text: string) {
  fireEvent.change(input, { target: { value: text } });
  fireEvent.keyDown(input, { key: "Enter" });
}

beforeEach(() => settingsStore.setState({ units: "metric" }));
afterEach(cleanup);

describe("by keyboard", () => {
  test("arrow keys move the reflector by a centimetre, Shift by ten, as one undo step", async () => {
    const user = userEvent.setup();
    open();
    slider("Spacing of the reflector").focus();
    await user.keyboard("{ArrowUp}{ArrowRight}{ArrowLeft}");
    expect(spacingOf(plan())).toBeCloseTo(8.41, 9);
    await user.keyboard("{Shift>}{ArrowUp}{/Shift}{PageUp}");
    expect(spacingOf(plan())).toBeCloseTo(8.61, 9);
    expect(planStore.getState().undoLabel).toBe("move the reflector");
    planStore.getState().undo();
    expect(spacingOf(plan())).toBeCloseTo(8.4, 9);
    expect(planStore.getState().canUndo).toBe(false);
  });

  test("leaving a handle ends the run of steps", async () => {
    const user = userEvent.setup();
    open();
    slider("Spacing of the reflector").focus();
    await user.keyboard("{ArrowUp}");
    await user.tab();
    slider("Spacing of the reflector").focus();
    await user.keyboard("{ArrowUp}");
    planStore.getState().undo();
    expect(spacingOf(plan())).toBeCloseTo(8.41, 9);
  });

  test("arrow keys lengthen a mast and turn the beam, round past north", async () => {
    const user = userEvent.setup();
    open(yardPlan({ site: { heading_deg: 359, ituRegion: 1 } }));
    slider("Length of the driven element").focus();
    await user.keyboard("{ArrowUp}");
    expect(plan().elements[0]!.height_m).toBeCloseTo(10.01, 9);
    slider("Heading of the beam").focus();
    await user.keyboard("{ArrowRight}{ArrowRight}");
    expect(plan().site?.heading_deg).toBe(1);
  });

  test("in inch countries a press is an eighth of an inch", async () => {
    settingsStore.setState({ units: "imperial" });
    const user = userEvent.setup();
    open(yardPlan({ elements: [driven, { ...reflector, forward_m: -30 * 0.3048 }] }));
    slider("Spacing of the reflector").focus();
    await user.keyboard("{ArrowUp}");
    expect(spacingOf(plan())).toBeCloseTo((30 * 12 + 1 / 8) * 0.0254, 9);
  });

  test("sliders say their value in words", () => {
    open();
    const spacing = slider("Spacing of the reflector");
    expect(spacing.getAttribute("aria-valuenow")).toBe("8.4");
    expect(spacing.getAttribute("aria-valuetext")).toBe("8.40 m, 0.200 wavelengths behind the driven element");
    expect(slider("Heading of the beam").getAttribute("aria-valuetext")).toBe("62 degrees from true north");
    expect(slider("Length of the reflector").getAttribute("aria-valuetext")).toBe("10.50 m, 0.250 wavelengths");
  });
});

describe("by pointer", () => {
  const down = { pointerId: 1, button: 0, clientX: 500, clientY: 500 };

  test("dragging the reflector along the beam moves it by what the scale says, snapped, live, as one undo step", () => {
    const { container } = open(yardPlan({ site: { heading_deg: 90, ituRegion: 1 } }));
    const scale = pxPerM(container);
    const handle = slider("Spacing of the reflector");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, clientX: 500 + 10 });
    expect(spacingOf(plan())).toBeCloseTo(Math.round((8.4 - 10 / scale) * 100) / 100, 9);
    fireEvent.pointerMove(handle, { ...down, clientX: 500 + 20, clientY: 530 });
    expect(spacingOf(plan())).toBeCloseTo(Math.round((8.4 - 20 / scale) * 100) / 100, 9);
    // The scale waits for the release.
    expect(pxPerM(container)).toBeCloseTo(scale, 6);
    fireEvent.pointerUp(handle, { ...down, clientX: 500 + 20 });
    expect(pxPerM(container)).toBeGreaterThan(scale * 1.01);
    planStore.getState().undo();
    expect(spacingOf(plan())).toBe(8.4);
    expect(planStore.getState().canUndo).toBe(false);
  });

  test("with Shift the handle goes at a tenth of the pace, to the millimetre", () => {
    const { container } = open(yardPlan({ site: { heading_deg: 90, ituRegion: 1 } }));
    const scale = pxPerM(container);
    const handle = slider("Spacing of the reflector");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, clientX: 490, shiftKey: true });
    expect(spacingOf(plan())).toBeCloseTo(Math.round((8.4 + 1 / scale) * 1000) / 1000, 9);
  });

  test("Escape during a drag puts everything back and leaves no undo step", () => {
    open();
    const handle = slider("Length of the reflector");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, clientY: 480 });
    expect(plan().elements[1]!.height_m).toBeGreaterThan(10.6);
    fireEvent.keyDown(document.body, { key: "Escape" });
    expect(plan().elements[1]!.height_m).toBe(10.5);
    expect(planStore.getState().canUndo).toBe(false);
    fireEvent.pointerMove(handle, { ...down, clientY: 400 });
    fireEvent.pointerUp(handle, down);
    expect(plan().elements[1]!.height_m).toBe(10.5);
  });

  test("a press without a move changes nothing", () => {
    open();
    const before = plan();
    const handle = slider("Heading of the beam");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerUp(handle, down);
    expect(plan()).toBe(before);
    expect(planStore.getState().canUndo).toBe(false);
  });

  test("moves within one place of the grid are no edit", () => {
    open(yardPlan({ site: { heading_deg: 90, ituRegion: 1 } }));
    const handle = slider("Spacing of the reflector");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, clientX: 510 });
    const moved = plan();
    fireEvent.pointerMove(handle, { ...down, clientX: 510.001 });
    expect(plan()).toBe(moved);
  });

  test("a finger on a handle does not scroll the page", () => {
    open();
    expect(fireEvent.touchStart(slider("Length of the reflector"))).toBe(false);
  });

  test("another finger does not join in", () => {
    open();
    const handle = slider("Length of the reflector");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, pointerId: 2, clientY: 300 });
    expect(plan().elements[1]!.height_m).toBe(10.5);
  });

  test("the beam's end can be dragged round, and the elements turn with it", () => {
    const { container } = open(yardPlan({ site: { heading_deg: 0, ituRegion: 1 } }));
    const handle = slider("Heading of the beam");
    const ring = container.querySelector(".yard-compass")!;
    const [x, y, radius] = ["cx", "cy", "r"].map((name) => Number(ring.getAttribute(name))) as [number, number, number];
    expect(placeOf(handle)).toEqual({ x, y: y - radius });
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, clientX: 500 + radius, clientY: 500 + radius });
    expect(plan().site?.heading_deg).toBe(90);
    const end = placeOf(slider("Heading of the beam"));
    expect(end.x).toBeCloseTo(x + radius, 6);
    const back = placeOf(slider("Spacing of the reflector"));
    expect(back.y).toBeCloseTo(y, 6);
    expect(back.x).toBeLessThan(x);
  });

  test("what is dragged stays in sight", () => {
    open(yardPlan({ site: { heading_deg: 90, ituRegion: 1 } }));
    const handle = slider("Spacing of the reflector");
    fireEvent.pointerDown(handle, down);
    fireEvent.pointerMove(handle, { ...down, clientX: -5000 });
    expect(placeOf(slider("Spacing of the reflector")).x).toBeCloseTo(12, 0);
  });

  test("an element cannot be dragged into another: it stops at the last good place, and the page says why", () => {
    open(yardPlan({ site: { heading_deg: 90, ituRegion: 1 }, elements: [driven, { ...reflector, forward_m: -0.01 }] }));
    const before = plan();
    slider("Spacing of the reflector").focus();
    fireEvent.keyDown(slider("Spacing of the reflector"), { key: "ArrowDown" });
    expect(plan()).toBe(before);
    expect(document.querySelector("output")!.textContent).toMatch(/apart/);
    fireEvent.keyDown(slider("Spacing of the reflector"), { key: "ArrowUp" });
    expect(document.querySelector("output")!.textContent).toBe("");
  });
});

describe("fields", () => {
  // Keystroke by keystroke is tested with the field itself; here it would only be slow.
  const type = (name: string, text: string) => enter(field(name), text);

  test("spacing, heading and lengths go into the plan and the drawing", () => {
    open();
    type("spacing", "1/4 wl");
    expect(spacingOf(plan())).toBeCloseTo(10.5, 9);
    type("heading, true", "-30");
    expect(plan().site?.heading_deg).toBe(330);
    type("reflector length", "+6 %");
    expect(plan().elements[1]!.height_m).toBeCloseTo(10.6, 9);
    expect(slider("Length of the reflector").getAttribute("aria-valuenow")).toBe("10.6");
    type("driven length", "33 ft 6 in");
    expect(plan().elements[0]!.height_m).toBeCloseTo(10.2108, 9);
  });

  test("conductor and radials are the same for both until they are set apart", async () => {
    const user = userEvent.setup();
    open();
    type("radials", "24");
    type("radial length", "5 m");
    type("radial wire", "14 AWG");
    type("conductor", "3 mm");
    type("radials above soil", "-5 cm");
    for (const element of plan().elements) {
      expect(element.diameter_mm).toBe(3);
      expect(element.radials).toMatchObject({ count: 24, length_m: 5, diameter_mm: 1.62772663379, height_m: -0.05 });
    }
    await user.click(screen.getByLabelText("same for both"));
    const [, back] = screen.getAllByLabelText<HTMLInputElement>("radials");
    enter(back!, "8");
    expect(plan().elements.map((element) => element.radials.count)).toEqual([24, 8]);
    await user.click(screen.getByLabelText("same for both"));
    expect(plan().elements.map((element) => element.radials.count)).toEqual([24, 24]);
  });

  test.each([
    ["spacing", "0", /0 mm apart/],
    ["spacing", "1e9", /too large: at most 1000\.00 m/],
    ["driven length", "-5 m", /too small: at least 0\.42 m/],
    ["driven length", "NaN", /not a unit/],
    ["reflector length", "999 m", /too large: at most 168\.00 m/],
    ["conductor", "2 m", /too large: at most 840 mm/],
    ["radials", "121", /too large: at most 120/],
    ["radials", "7.5", /not a whole number/],
    ["radials", "", /Nothing is written/],
    ["radial length", "0", /too small: at least 0\.42 m/],
    ["radials above soil", "-1 m", /too small: at least −0\.30 m/],
  ])("%s %j is refused with its limit; the plan stays and the text stays", (name, text, message) => {
    open();
    const before = plan();
    type(name, text);
    expect(field(name).value).toBe(text);
    expect(field(name).getAttribute("aria-invalid")).toBe("true");
    const said = (field(name).getAttribute("aria-describedby") ?? "")
      .split(" ")
      .map((id) => document.getElementById(id)?.textContent)
      .join(" ");
    expect(said).toMatch(message);
    expect(plan()).toBe(before);
  });

  test("thicker than a tenth of its length is refused by the plan's own check", () => {
    open(yardPlan({ elements: [{ ...driven, height_m: 1 }, reflector] }));
    type("conductor", "200 mm");
    expect(plan().elements[0]!.diameter_mm).toBe(2);
    expect(field("conductor").getAttribute("aria-invalid")).toBe("true");
  });

  const told = (name: string) =>
    field(name)
      .getAttribute("aria-describedby")!
      .split(" ")
      .map((id) => document.getElementById(id)?.textContent)
      .join(" ");

  test("a caution about the array stands under the drawings, and its field points to it", () => {
    open();
    expect(told("spacing")).not.toMatch(/wl:/);
    type("spacing", "0.09 wl");
    expect(told("spacing")).toMatch(/Closer together than 0\.1 wl/);
    expect(told("reflector length")).not.toMatch(/Closer/);
    expect(document.querySelector(".yard-note")!.textContent).toMatch(/^Closer/);
    expect(document.querySelector(".yard-note")!.textContent).not.toMatch(/more below/);
  });

  test("a second one about the array stands below with those about wire, and the first says so", () => {
    open();
    type("spacing", "0.09 wl");
    type("reflector length", "+1 %");
    expect(document.querySelector(".yard-note")!.textContent).toMatch(/^Closer.*\(1 more below\)$/);
    expect(told("reflector length")).toMatch(/Less than 2 % longer/);
    expect(document.querySelector(".yard-cautions")!.textContent).toMatch(/Less than 2 % longer/);
    expect(document.querySelector(".yard-cautions")!.textContent).not.toMatch(/Closer/);
  });
});

describe("the reflector", () => {
  test("goes and comes by one press, in the drawing as well", async () => {
    const user = userEvent.setup();
    open();
    await user.click(screen.getByText("Take reflector out"));
    expect(reflectorOf(plan())).toBeUndefined();
    expect(screen.queryByLabelText("spacing")).toBeNull();
    await user.click(screen.getByLabelText("Add a reflector here"));
    expect(spacingOf(plan())).toBeCloseTo(8.4, 9);
    planStore.getState().undo();
    expect(reflectorOf(plan())).toBeUndefined();
  });

  test("adding it does not change the scale: the yard had kept its place", async () => {
    const user = userEvent.setup();
    const { container } = open(yardPlan({ elements: [driven] }));
    const ghost = placeOf(screen.getByLabelText("Add a reflector here"));
    await user.click(screen.getByText("Add reflector"));
    const back = placeOf(slider("Spacing of the reflector"));
    expect(back.x).toBeCloseTo(ghost.x, 6);
    expect(back.y).toBeCloseTo(ghost.y, 6);
    expect(container.querySelectorAll(".yard-field")).toHaveLength(2);
  });

  test("four elements, off the beam line too, each have their handles and fields", () => {
    open(
      yardPlan({
        elements: [driven, reflector, { ...reflector, id: "c", left_m: 8 }, { ...driven, id: "d", left_m: -6 }],
      }),
    );
    expect(screen.getAllByRole("slider")).toHaveLength(1 + 3 + 4);
    expect(field("element 4 length").value).toBe("10.00 m");
  });
});

test("a plan that cannot be used leaves the last good drawing in place", () => {
  open();
  const good = placeOf(slider("Spacing of the reflector"));
  act(() =>
    planStore
      .getState()
      .edit((p) => ({ ...p, elements: p.elements.map((e) => ({ ...e, height_m: Number.NaN })) }), "break"),
  );
  expect(field("driven length").value).toBe("–");
  expect(placeOf(slider("Spacing of the reflector"))).toEqual(good);
  expect(slider("Length of the reflector").getAttribute("aria-valuenow")).toBe("10.5");
});
