import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { readPlan, type SavedPlan, withRadials } from "../../../engine/index.ts";
import { bearingOf, directionOf } from "../../../src/rooms/yard/radials/bearings.ts";
import { readoutRows } from "../../../src/rooms/yard/radials/layingRows.ts";
import { RadialDetails } from "../../../src/rooms/yard/radials/RadialDetails.tsx";
import { useYardEdits } from "../../../src/rooms/yard/useYardEdits.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { readoutRequest } from "../../../src/store/readoutRequest.ts";
import { planStore } from "../../../src/store/usePlan.ts";
import { settingsStore } from "../../../src/store/useSettings.ts";
import { okValue } from "../../support/okValue.ts";

vi.setConfig({ testTimeout: 30_000 });

const plan = () => planStore.getState().plan;
const first = () => plan().elements[0]!;
const nothing = () => undefined;

function Opened() {
  return <RadialDetails edits={useYardEdits(nothing)} />;
}

function open(saved: SavedPlan) {
  planStore.getState().start(saved);
  render(<Opened />);
  // jsdom knows no modal dialogs; its parts are there all the same.
  HTMLDialogElement.prototype.showModal ??= nothing;
  fireEvent.click(screen.getByText("in detail …"));
}

const pick = (label: string) => fireEvent.click(screen.getByLabelText(label));
const type = (label: string, text: string) => {
  const input = screen.getByLabelText<HTMLInputElement>(label, { selector: "input" });
  fireEvent.change(input, { target: { value: text } });
  fireEvent.keyDown(input, { key: "Enter" });
};

beforeEach(() => settingsStore.setState({ units: "metric" }));
afterEach(cleanup);

describe("radials in detail", () => {
  test("a sheath is put on all radials, with figures to change, and taken off again", () => {
    open(demoPlan);
    pick("insulated");
    const wire_mm = first().radials.diameter_mm;
    expect(plan().elements.map((e) => e.radials.insulation?.diameter_mm)).toEqual([2 * wire_mm, 2 * wire_mm]);
    type("its relative permittivity", "2.3");
    expect(first().radials.insulation?.relativePermittivity).toBe(2.3);
    // Thinner than the wire: refused in words, and what stood there stays.
    type("over the insulation", "0.5 mm");
    expect(first().radials.insulation?.diameter_mm).toBe(2 * wire_mm);
    pick("bare");
    expect(first().radials.insulation).toBeUndefined();
  });

  test("how fields meet and whether the bases are joined; the usual way leaves no trace in the plan", () => {
    open(demoPlan);
    pick("end on a wire midway");
    pick("a wire joins the bases");
    expect(plan().fields).toEqual({ radials: "bus", bonded: true });
    pick("run on, insulated");
    pick("a wire joins the bases");
    expect("fields" in plan()).toBe(false);
    planStore.getState().undo();
    expect(plan().fields).toEqual({ radials: "overlap", bonded: true });
  });

  test("stakes are driven under every base, changed, and pulled", () => {
    open(demoPlan);
    pick("a stake under each base, joined to it");
    type("in the soil", "0.9 m");
    expect(plan().elements.map((e) => e.stake)).toEqual(Array(2).fill({ length_m: 0.9, diameter_mm: 16 }));
    pick("a stake under each base, joined to it");
    expect(first().stake).toBeUndefined();
  });

  test("radials one by one, by true bearing; one more in the widest gap; alike again", () => {
    open(withRadials({ ...demoPlan, site: { ...demoPlan.site!, heading_deg: 60 } }, { count: 4, length_m: 3 }));
    fireEvent.click(screen.getAllByText("Lay them one by one")[0]!);
    expect(first().radials.each?.map((one) => one.direction_deg)).toEqual([45, 135, 225, 315]);
    type("bearing of 1", "0");
    type("length of 2", "5 m");
    expect(first().radials.each![0]!.direction_deg).toBe(60);
    expect(first().radials).toMatchObject({ count: 4, length_m: 3.5 });
    // The gap from 315 to 60 degrees is the widest.
    fireEvent.click(screen.getByText("Add one in the widest gap"));
    expect(first().radials.each!.at(-1)!.direction_deg).toBe(7.5);
    fireEvent.click(screen.getByLabelText("Take out driven radial 1"));
    expect(first().radials.each).toHaveLength(4);
    fireEvent.click(screen.getByText("Make them alike"));
    expect(first().radials).not.toHaveProperty("each");
    expect(first().radials.count).toBe(4);
  });

  test("a plan that keeps to the preview says that these count in the full answer only", () => {
    open({ ...demoPlan, soilModel: "screen" });
    expect(within(screen.getByText(/knows nothing of these/)).getByText(/full-wave answer/)).toBeDefined();
  });
});

describe("bearings", () => {
  test("to the left of a beam towards the east is north; there and back", () => {
    expect(bearingOf(90, 90)).toBe(0);
    expect(bearingOf(-30, 350)).toBe(20);
    for (const bearing of [0, 62, 359.5]) expect(bearingOf(directionOf(bearing, 62), 62)).toBe(bearing);
  });
});

describe("the spread between ways of lying", () => {
  const few = withRadials(demoPlan, { count: 2, length_m: 2 });
  const request = readoutRequest(few);
  const rows = [0, -0.05].map((height_m) => ({
    height_m,
    readout: okValue(readPlan(withRadials(few, { height_m }), request)),
  }));

  test("each row is the full answer to its own plan; the plan's own way is marked; another plan has none", () => {
    const found = readoutRows({ plan: few, rows }, few)!;
    expect(found.list.map((row) => [row.lie, row.isNow])).toEqual([
      ["on bare earth (5 mm)", true],
      ["slit in (5 cm deep)", false],
    ]);
    expect(found.list[1]!.swr).toBe(rows[1]!.readout.feeds[0]!.swr50.toFixed(2));
    expect(readoutRows({ plan: few, rows }, withRadials(few, { count: 3 }))).toBeNull();
  });
});
