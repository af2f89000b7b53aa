import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { afterEach, expect, test, vi } from "vitest";
import type { PlanReadout } from "../../../engine/index.ts";
import { AzimuthCut } from "../../../src/charts/AzimuthCut.tsx";
import type { DesignTrace } from "../../../src/charts/DesignTrace.ts";
import { ElevationCut, type ElevationCutProps } from "../../../src/charts/ElevationCut.tsx";
import { sampleGain, sampleReadout } from "./sampleReadout.ts";

afterEach(cleanup);

const live = (readout: PlanReadout | null): DesignTrace => ({
  id: "live",
  name: "this design",
  role: "live",
  style: 0,
  readout,
});
const pin = (style: number, readout: PlanReadout | null): DesignTrace => ({
  id: `pin-${style}`,
  name: `pin ${style}`,
  role: "pin",
  style,
  readout,
});
const path = { elevation_deg: 8, from_deg: 6.5, to_deg: 9.5 };
const masts = [
  { id: "d", forward_m: 0, base_m: 0, height_m: 10, isFed: true },
  { id: "r", forward_m: -8, base_m: 0, height_m: 11, isFed: false },
];
const elevation: ElevationCutProps = {
  traces: [live(sampleReadout(4)), pin(0, sampleReadout(1))],
  masts,
  heading_deg: 62,
  path,
  form: "polar",
  stretched: false,
  outer_dBi: 6,
  marker_deg: 8,
  stale: false,
  onMarker: () => {},
};

/** As a room holds it: the marker's place lives outside the chart. */
function Elevation(props: Partial<ElevationCutProps>) {
  const [marker_deg, setMarker] = useState(8);
  return <ElevationCut {...elevation} marker_deg={marker_deg} onMarker={setMarker} {...props} />;
}

/** Everything any path or text of a drawing is placed by. */
function expectDrawable(box: HTMLElement) {
  for (const element of box.querySelectorAll("svg *"))
    for (const { name, value } of element.attributes)
      expect(`${element.tagName} ${name}=${value}`).not.toMatch(/NaN|Infinity|undefined/);
}

test("the elevation cut says in words what it shows", () => {
  render(<Elevation />);
  const words = screen.getByRole("img").getAttribute("aria-label")!;
  expect(words).toContain("ahead toward 062°");
  expect(words).toContain(`at 8° ${sampleGain(8, 0, 4).toFixed(1)} dBi ahead`.replace("-", "−"));
  expect(words).toContain("pin 0: loudest");
});

test("arrow keys move the marker as it looks: left and right, up from the horizon, Home and End to the horizons", async () => {
  const user = userEvent.setup();
  render(<Elevation />);
  const slider = screen.getByRole("slider");
  slider.focus();
  const says = () => slider.getAttribute("aria-valuetext")!;
  expect(says()).toMatch(/^8° ahead: this design −?\d/);
  await user.keyboard("{ArrowUp}{ArrowUp}");
  expect(says()).toMatch(/^10° ahead/);
  await user.keyboard("{ArrowRight}");
  expect(says()).toMatch(/^9° ahead/);
  await user.keyboard("{Shift>}{ArrowLeft}{/Shift}");
  expect(says()).toMatch(/^14° ahead/);
  await user.keyboard("{Home}");
  expect(says()).toMatch(/^0° behind/);
  await user.keyboard("{ArrowUp}");
  expect(says()).toMatch(/^1° behind/);
  await user.keyboard("{End}{ArrowRight}");
  expect(says()).toMatch(/^0° ahead: this design – dBi/);
});

test("the key reads every design at the marker", () => {
  render(<Elevation />);
  const row = within(screen.getByRole("list")).getByText("pin 0").closest("li")!;
  expect(row.textContent).toBe(`pin 0${sampleGain(8, 0, 1).toFixed(1).replace("-", "−")} dBi`);
});

test("figures are read from the answers that are printed, the curve from the one that is drawn", () => {
  const { container } = render(<Elevation />);
  const said = screen.getByRole("img").getAttribute("aria-label");
  const key = container.querySelector(".tk")!.textContent;
  const curve = container.querySelector("path.tr-live")!.getAttribute("d");
  cleanup();
  const moved = render(
    <Elevation traces={[live(sampleReadout(2)), pin(0, sampleReadout(1))]} printed={elevation.traces} />,
  );
  expect(screen.getByRole("img").getAttribute("aria-label")).toBe(said);
  expect(moved.container.querySelector(".tk")!.textContent).toBe(key);
  expect(moved.container.querySelector("path.tr-live")!.getAttribute("d")).not.toBe(curve);
});

/** How often something in the part of a chart that lies still is changed while `then` happens. */
function touchedBelow(container: HTMLElement, then: () => void): number {
  const watch = new MutationObserver(() => {});
  watch.observe(container.querySelector("svg.cf-svg")!, {
    attributes: true,
    childList: true,
    characterData: true,
    subtree: true,
  });
  then();
  return watch.takeRecords().length;
}
const lineOf = (container: HTMLElement) => container.querySelector("path.tr-live")!.getAttribute("d");

test("a live design that moves draws nothing of the elevation cut anew but what lies over the rest", () => {
  const { container, rerender } = render(<Elevation printed={elevation.traces} />);
  const line = lineOf(container);
  const touched = touchedBelow(container, () =>
    rerender(
      <Elevation
        traces={[live(sampleReadout(3)), elevation.traces[1]!]}
        masts={[masts[0]!, { ...masts[1]!, forward_m: -9 }]}
        printed={elevation.traces}
      />,
    ),
  );
  expect(lineOf(container)).not.toBe(line);
  expect(touched).toBe(0);
});

test("pressing on the drawing puts the marker under the finger", () => {
  const onMarker = vi.fn();
  render(<Elevation onMarker={onMarker} />);
  const pad = screen.getByRole("slider");
  const { width, height } = pad.style;
  // Nothing is laid out here, so the pad's own corner is the page's; its ground line is 4 px above its foot.
  fireEvent.pointerDown(pad, {
    clientX: Number.parseFloat(width) / 2,
    clientY: Number.parseFloat(height) / 2,
    buttons: 1,
  });
  expect(onMarker).toHaveBeenLastCalledWith(90);
  fireEvent.pointerMove(pad, { clientX: Number.parseFloat(width), clientY: Number.parseFloat(height) - 4, buttons: 1 });
  expect(onMarker).toHaveBeenLastCalledWith(0);
  onMarker.mockClear();
  fireEvent.pointerMove(pad, { clientX: 0, clientY: 0, buttons: 0 });
  expect(onMarker).not.toHaveBeenCalled();
});

for (const form of ["polar", "rectangular"] as const)
  for (const stretched of [false, true])
    test(`${form}, ${stretched ? "stretched" : "true"}: zero field at horizon and zenith leaves gaps and no broken number`, () => {
      const { container } = render(<Elevation form={form} stretched={stretched} />);
      expectDrawable(container);
      const line = container.querySelector("path.tr-live[d]:not([d=''])")!.getAttribute("d")!;
      // Horizons and zenith are exactly zero in the sample: two runs, one ahead and one behind.
      expect(line.match(/M/g)).toHaveLength(2);
      expect(screen.getByText(stretched ? /low angles stretched/ : /true angles/)).toBeTruthy();
    });

test("a pattern of NaN alone draws no line, says so, and breaks nothing", () => {
  const dead = sampleReadout();
  const cut = { ...dead.elevationCut, gain_dBi: dead.elevationCut.gain_dBi.map(() => Number.NaN) };
  const { container } = render(<Elevation traces={[live({ ...dead, elevationCut: cut })]} />);
  expectDrawable(container);
  expect(screen.getByRole("img").getAttribute("aria-label")).toContain("no field in this plane");
});

test("with no answer the same space waits calmly", () => {
  const { container } = render(<Elevation />);
  const height = container.querySelector("svg.cf-svg")!.getAttribute("height");
  cleanup();
  const empty = render(<Elevation traces={[live(null)]} />);
  expect(screen.getByText("No pattern yet.")).toBeTruthy();
  expect(empty.container.querySelector("svg.cf-svg")!.getAttribute("height")).toBe(height);
  expect(screen.getByRole("img").getAttribute("aria-label")).toContain("no pattern yet");
  expectDrawable(empty.container);
});

test("an old answer is marked by words, in sight and in the text alternative", () => {
  render(<Elevation stale />);
  expect(screen.getByText("from an earlier plan")).toBeTruthy();
  expect(screen.getByRole("img").getAttribute("aria-label")).toContain("from an earlier plan");
  cleanup();
  render(<Elevation />);
  expect(screen.queryByText("from an earlier plan")).toBeNull();
});

test("the figures are there as a table, once it is opened", () => {
  const { container } = render(<Elevation />);
  expect(screen.queryByRole("table")).toBeNull();
  const details = container.querySelector("details")!;
  details.open = true;
  fireEvent(details, new Event("toggle"));
  const table = screen.getByRole("table");
  expect(
    within(table)
      .getAllByRole("columnheader")
      .map((h) => h.textContent),
  ).toEqual(["elevation", "this design", "pin 0"]);
  const row = within(table).getByRole("rowheader", { name: "8° behind" }).closest("tr")!;
  expect(row.cells[1]!.textContent).toBe(sampleGain(8, 180, 4).toFixed(1).replace("-", "−"));
  expect(within(table).getByRole("rowheader", { name: "straight up" }).closest("tr")!.cells[1]!.textContent).toBe("–");
});

test("the live design is drawn last and heaviest, each pin with a dash of its own", () => {
  const four = [0, 1, 2, 3].map((i) => pin(i, sampleReadout(i - 3)));
  const { container } = render(<Elevation traces={[live(sampleReadout(4)), ...four]} />);
  const drawing = container.querySelector(".cf-plot")!;
  const lines = [...drawing.querySelectorAll(".tr-line")].map((l) => l.getAttribute("class")!);
  expect(lines.at(-1)).toContain("tr-live");
  expect(new Set(lines.map((l) => l.match(/tr-dash-\d/)?.[0])).size).toBe(5);
});

const azimuth = {
  traces: [live(sampleReadout(4)), pin(0, sampleReadout(1))],
  heading_deg: 62,
  elevation_deg: 8,
  rearSector_deg: 120,
  form: "polar" as const,
  outer_dBi: 6,
  marker_deg: 62,
  stale: false,
  onMarker: () => {},
};

test("the azimuth cut speaks in true bearings and names the loudest of the rear sector", () => {
  render(<AzimuthCut {...azimuth} />);
  const words = screen.getByRole("img").getAttribute("aria-label")!;
  expect(words).toContain("loudest toward 062°");
  expect(words).toContain("Rear sector 120° wide: loudest toward 182° and 302°");
  expect(screen.getByText("read toward 062°")).toBeTruthy();
});

test("figures of the azimuth cut are those that are printed, the marks those that are drawn", () => {
  const { container } = render(<AzimuthCut {...azimuth} />);
  const foot = container.querySelector(".cf-foot")!.textContent;
  const marks = container.querySelector(".ac-worst")!.getAttribute("d");
  cleanup();
  const traces = azimuth.traces.map((trace) => (trace.role === "live" ? live(sampleReadout(1)) : trace));
  const moved = render(<AzimuthCut {...azimuth} traces={traces} printed={azimuth.traces} />);
  expect(moved.container.querySelector(".cf-foot")!.textContent).toBe(foot);
  expect(moved.container.querySelector(".ac-worst")!.getAttribute("d")).not.toBe(marks);
});

test("a live design that moves draws nothing of the azimuth cut anew but what lies over the rest", () => {
  const { container, rerender } = render(<AzimuthCut {...azimuth} printed={azimuth.traces} />);
  const line = lineOf(container);
  const traces = [live(sampleReadout(3)), azimuth.traces[1]!];
  const touched = touchedBelow(container, () =>
    rerender(<AzimuthCut {...azimuth} traces={traces} printed={azimuth.traces} />),
  );
  expect(lineOf(container)).not.toBe(line);
  expect(touched).toBe(0);
});

test("the bearing marker goes round: past 359 comes 0", async () => {
  const user = userEvent.setup();
  const onMarker = vi.fn();
  render(<AzimuthCut {...azimuth} marker_deg={359} onMarker={onMarker} />);
  screen.getByRole("slider").focus();
  await user.keyboard("{ArrowRight}");
  expect(onMarker).toHaveBeenLastCalledWith(0);
  await user.keyboard("{Home}");
  expect(onMarker).toHaveBeenLastCalledWith(62);
  await user.keyboard("{End}");
  expect(onMarker).toHaveBeenLastCalledWith(242);
});

test("north is up: pressed above the middle the marker reads 0, to the right 90", () => {
  const onMarker = vi.fn();
  render(<AzimuthCut {...azimuth} onMarker={onMarker} />);
  const pad = screen.getByRole("slider");
  const [w, h] = [Number.parseFloat(pad.style.width), Number.parseFloat(pad.style.height)];
  fireEvent.pointerDown(pad, { clientX: w / 2, clientY: 5, buttons: 1 });
  expect(onMarker).toHaveBeenLastCalledWith(0);
  fireEvent.pointerDown(pad, { clientX: w - 5, clientY: h / 2, buttons: 1 });
  expect(onMarker).toHaveBeenLastCalledWith(90);
});

test("the rear sector is hatched, and both of its loud directions are marked", () => {
  const { container } = render(<AzimuthCut {...azimuth} />);
  const fill = container.querySelector(".ac-rear")!.getAttribute("fill")!;
  expect(container.querySelector(`pattern[id="${fill.slice(5, -1)}"]`)).toBeTruthy();
  expect(container.querySelectorAll(".ac-worst")).toHaveLength(2);
});

for (const form of ["polar", "rectangular"] as const)
  test(`the ${form} azimuth cut takes any heading, a sector all round, NaN and −Infinity`, () => {
    const readout = sampleReadout();
    const gain_dBi = readout.azimuthCut.gain_dBi.map((g, i) =>
      i % 50 === 0 ? Number.NaN : i % 70 === 0 ? Number.NEGATIVE_INFINITY : g,
    );
    const holed = { ...readout, azimuthCut: { ...readout.azimuthCut, gain_dBi } };
    for (const heading_deg of [0, 90.5, 359.9]) {
      const { container } = render(
        <AzimuthCut {...azimuth} form={form} heading_deg={heading_deg} rearSector_deg={360} traces={[live(holed)]} />,
      );
      expectDrawable(container);
      cleanup();
    }
  });
