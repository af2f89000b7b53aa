import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, expect, test, vi } from "vitest";
import { BandChart, type BandChartProps } from "../../../src/charts/BandChart.tsx";
import type { BandTrace } from "../../../src/charts/BandTrace.ts";
import { FeedPoints } from "../../../src/rooms/feed/FeedPoints.tsx";
import { SideReadouts } from "../../../src/rooms/sky/SideReadouts.tsx";
import { sampleReadout } from "./sampleReadout.ts";

afterEach(cleanup);

const t = Array.from({ length: 33 }, (_, i) => i / 32);
/** R from 30 to 40 ohm and X through zero at 7.1 MHz, both straight. */
const sweep = {
  frequency_MHz: t.map((u) => 6.95 + 0.3 * u),
  resistance_ohm: t.map((u) => 30 + 10 * u),
  reactance_ohm: t.map((u) => -45 + 90 * u),
};
const live: BandTrace = { id: "live/d", name: "this design", role: "live", style: 0, feed: 0, sweep };
const chart: BandChartProps = {
  traces: [live],
  quantity: "swr",
  band: { from_MHz: 7, to_MHz: 7.2 },
  bandLabel: "40 m",
  design_MHz: 7.1,
  top: 3,
  marker_MHz: 7.1,
  stale: false,
  onMarker: () => {},
};

test("the SWR chart says what it shows: lowest, X = 0 apart from it, and how much stays under 2", () => {
  render(<BandChart {...chart} />);
  const words = screen.getByRole("img").getAttribute("aria-label")!;
  expect(words).toContain("7.000 to 7.200 MHz");
  expect(words).toMatch(/Lowest SWR 1\.\d\d at 7\.1\d\d MHz/);
  expect(words).toContain("X = 0 at 7.100 MHz, where R is 35 Ω");
  expect(words).toMatch(/2 or less over 7\.0\d\d–7\.\d\d\d MHz/);
});

test("lowest and X = 0 are marked by shapes of their own, with their figures beside", () => {
  const { container } = render(<BandChart {...chart} />);
  expect(container.querySelectorAll("circle.bc-lowest")).toHaveLength(1);
  expect(container.querySelectorAll("path.bc-lowest")).toHaveLength(1);
  expect(screen.getByText("X = 0 at 7.100", { selector: "text" })).toBeTruthy();
});

test("the marker reads by the kilohertz and its keys reach the band's edges", async () => {
  const user = userEvent.setup();
  const onMarker = vi.fn();
  render(<BandChart {...chart} onMarker={onMarker} />);
  const slider = screen.getByRole("slider");
  expect(slider.getAttribute("aria-valuetext")).toBe("7.100 MHz: this design 1.43");
  slider.focus();
  await user.keyboard("{ArrowRight}");
  expect(onMarker).toHaveBeenLastCalledWith(7.101);
  await user.keyboard("{Home}");
  expect(onMarker).toHaveBeenLastCalledWith(7);
  await user.keyboard("{End}");
  expect(onMarker).toHaveBeenLastCalledWith(7.2);
});

test("a curve above the top of the scale leaves the frame and is cut there, not laid along its edge", () => {
  const steep = { ...sweep, reactance_ohm: t.map((u) => -4500 + 9000 * u) };
  const { container } = render(<BandChart {...chart} traces={[{ ...live, sweep: steep }]} />);
  const line = container.querySelector("[clip-path] path.tr-live")!;
  const clip = line.closest("[clip-path]")!.getAttribute("clip-path")!;
  const frame = container.querySelector(`clipPath[id="${clip.slice(5, -1)}"] rect`)!;
  const top = Number(frame.getAttribute("y"));
  const heights = [...line.getAttribute("d")!.matchAll(/,(-?[\d.]+)/g)].map(([, y]) => Number(y));
  // Points outside the frame are still followed, well above it.
  expect(Math.min(...heights)).toBeLessThan(top - 100);
  expect(container.innerHTML).not.toMatch(/NaN|Infinity/);
});

for (const quantity of ["swr", "resistance", "reactance"] as const)
  test(`${quantity}: NaN, Infinity and nothing at all break no drawing`, () => {
    const holed = {
      ...sweep,
      resistance_ohm: sweep.resistance_ohm.map((r, i) =>
        i === 5 ? Number.NaN : i === 9 ? Number.POSITIVE_INFINITY : i === 12 ? -4 : r,
      ),
    };
    const some = render(<BandChart {...chart} quantity={quantity} traces={[{ ...live, sweep: holed }]} />);
    expect(some.container.innerHTML).not.toMatch(/NaN|Infinity/);
    const height = some.container.querySelector("svg.cf-svg")!.getAttribute("height");
    cleanup();
    const none = render(<BandChart {...chart} quantity={quantity} traces={[]} />);
    expect(none.container.innerHTML).not.toMatch(/NaN|Infinity/);
    expect(screen.getByText("No curve yet.")).toBeTruthy();
    expect(none.container.querySelector("svg.cf-svg")!.getAttribute("height")).toBe(height);
  });

test("a second feedpoint is a line of its own, thinner", () => {
  const second: BandTrace = { ...live, id: "live/e", name: "this design, element 2", feed: 1 };
  const { container } = render(<BandChart {...chart} traces={[live, second]} />);
  expect(container.querySelectorAll("[clip-path] path.tr-line")).toHaveLength(2);
  expect(container.querySelectorAll("path.bc-feed")).toHaveLength(1);
});

test("at the feedpoint: R + jX and SWR, each fed element by name when there are several", () => {
  const readout = sampleReadout();
  const fed = [{ id: "driven", name: "driven" }];
  render(<FeedPoints fed={fed} readout={readout} frequency="7.100 MHz" stale={false} />);
  expect(screen.getByText("31.2 + j12.4 Ω")).toBeTruthy();
  expect(screen.getByText("1.70 : 1")).toBeTruthy();
  expect(screen.queryByText("driven")).toBeNull();
  cleanup();
  const both = [
    ...readout.feeds,
    { elementId: "other", impedance_ohm: { re: -2, im: 4 }, swr50: Number.POSITIVE_INFINITY },
  ];
  render(
    <FeedPoints
      fed={[...fed, { id: "other", name: "element 2" }]}
      readout={{ ...readout, feeds: both }}
      frequency="7.100 MHz"
      stale
    />,
  );
  expect(screen.getByText("element 2")).toBeTruthy();
  expect(screen.getByText("none: power comes back")).toBeTruthy();
  expect(screen.getByText("from an earlier plan")).toBeTruthy();
});

test("beside the beam: the same rows before and after the answer", () => {
  const others = [{ id: "reflector", name: "reflector" }];
  const rows = () => screen.getAllByRole("term").map((r) => r.textContent);
  render(<SideReadouts readout={null} elevation_deg={8} stale={false} others={others} />);
  const before = rows();
  cleanup();
  render(<SideReadouts readout={sampleReadout()} elevation_deg={8} stale={false} others={others} />);
  expect(rows()).toEqual(before);
  expect(screen.getByText("0.50 at +127°")).toBeTruthy();
  expect(screen.getByText("38 %")).toBeTruthy();
  cleanup();
  render(
    <SideReadouts
      readout={{ ...sampleReadout(), halfPowerWidth_deg: null }}
      elevation_deg={8}
      stale={false}
      others={others}
    />,
  );
  expect(screen.getByText("all round")).toBeTruthy();
});
