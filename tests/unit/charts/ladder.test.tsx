import { cleanup, render, screen, within } from "@testing-library/react";
import { afterEach, expect, test } from "vitest";
import { Ladder } from "../../../src/charts/Ladder.tsx";
import { sampleReadout } from "./sampleReadout.ts";

afterEach(cleanup);

const ladder = {
  live: sampleReadout(4),
  baseline: sampleReadout(1.5),
  baselineName: "one vertical",
  path: { elevation_deg: 8, from_deg: 6.5, to_deg: 9.5 },
  rungs_deg: [3, 5, 8, 10, 15, 20, 30],
  rearSector_deg: 120,
  stale: false,
};

const rowOf = (angle: string) => screen.getByRole("rowheader", { name: new RegExp(`^${angle}°`) }).closest("tr")!;

test("a real table: rungs as row headers from the top, each with its difference, F/B and worst", () => {
  render(<Ladder {...ladder} />);
  const heads = screen.getAllByRole("rowheader").map((h) => h.textContent);
  expect(heads).toEqual(["30°", "20°", "15°", "10°", "8°path", "5°", "3°"]);
  const cells = within(rowOf("10")).getAllByRole("cell");
  expect(cells[1]!.textContent).toBe("+2.5");
  const rung = ladder.live.ladder.find((r) => r.elevation_deg === 10)!;
  expect(cells[2]!.textContent).toBe(rung.frontToBack_dB.toFixed(1));
  expect(cells[3]!.textContent).toBe(rung.frontToRear_dB.toFixed(1));
  expect(within(cells[0]!).getByRole("img").getAttribute("aria-label")).toBe(
    `one vertical ${figureOf(ladder.baseline.ladder[3]!.forward_dBi)} dBi, now ${figureOf(rung.forward_dBi)} dBi`,
  );
});

const figureOf = (v: number) => v.toFixed(1).replace("-", "−");

test("the rung that carries the path is shaded and says so", () => {
  render(<Ladder {...ladder} />);
  expect(rowOf("8").className).toContain("ld-row-path");
  expect(rowOf("10").className).not.toContain("ld-row-path");
});

test("a loss has a true minus and its numbers change sides with the marks", () => {
  render(<Ladder {...ladder} live={sampleReadout(0)} />);
  expect(within(rowOf("10")).getAllByRole("cell")[1]!.textContent).toBe("−1.5");
  const [base, now] = rowOf("10").querySelectorAll(".ld-number");
  expect(base!.getAttribute("class")).toContain("ld-number-right");
  expect(now!.getAttribute("class")).toContain("ld-number-left");
});

test("without a baseline the ladder shows gain itself, and draws no tick", () => {
  const { container } = render(<Ladder {...ladder} baseline={null} baselineName={null} />);
  expect(within(rowOf("10")).getAllByRole("cell")[1]!.textContent).toBe(figureOf(ladder.live.ladder[3]!.forward_dBi));
  expect(container.querySelector(".ld-tick")).toBeNull();
  expect(screen.getByRole("table").textContent).not.toContain("one vertical");
});

test("while the baseline's answer is on its way there is no difference rather than a wrong one", () => {
  render(<Ladder {...ladder} baseline={null} />);
  expect(within(rowOf("10")).getAllByRole("cell")[1]!.textContent).toBe("–");
});

test("with no answer the same rungs stand there, empty, the path's among them", () => {
  render(<Ladder {...ladder} live={null} />);
  expect(screen.getAllByRole("rowheader")).toHaveLength(7);
  expect(rowOf("8").className).toContain("ld-row-path");
  expect(within(rowOf("8")).getAllByRole("cell")[1]!.textContent).toBe("–");
});

test("gains that are not finite become dashes and put nothing in a wrong place", () => {
  const broken = sampleReadout();
  const ladderOf = broken.ladder.map((r, i) => ({
    ...r,
    forward_dBi: i === 0 ? Number.NEGATIVE_INFINITY : i === 1 ? Number.NaN : r.forward_dBi,
    frontToBack_dB: i === 0 ? Number.NaN : r.frontToBack_dB,
  }));
  const { container } = render(<Ladder {...ladder} live={{ ...broken, ladder: ladderOf }} />);
  expect(within(rowOf("3")).getAllByRole("cell")[1]!.textContent).toBe("–");
  expect(within(rowOf("3")).getAllByRole("cell")[2]!.textContent).toBe("–");
  expect(container.innerHTML).not.toMatch(/NaN|Infinity/);
  expect(rowOf("3").querySelector(".ld-dot")).toBeNull();
  expect(rowOf("3").querySelector(".ld-tick")).not.toBeNull();
});

test("an old answer says so in words", () => {
  render(<Ladder {...ladder} stale />);
  expect(screen.getByText("from an earlier plan")).toBeTruthy();
});

test("a mark stands between the printed ends where its gain is, to less than a pixel", () => {
  const { container } = render(<Ladder {...ladder} />);
  const [from, to] = [...container.querySelectorAll(".ld-ends > :not(.ld-unit)")].map((end) =>
    Number(end.textContent!.replace("−", "-")),
  );
  for (const rung of ladder.live.ladder) {
    const mark = rowOf(String(rung.elevation_deg)).querySelector<SVGGElement>(".ld-now")!;
    const place = Number(/translateX\((.*)%\)/.exec(mark.style.transform)![1]);
    expect(place).toBeCloseTo((100 * (rung.forward_dBi - from!)) / (to! - from!), 1);
  }
});
