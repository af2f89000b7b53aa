import { expect, test } from "vitest";
import { withRadials } from "../../../engine/index.ts";
import { currentLines, mostCurrent } from "../../../src/rooms/yard/currentLines.ts";
import { fitPlanFrame } from "../../../src/rooms/yard/planFrame.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";

const plan = withRadials(demoPlan, { count: 2, length_m: 4 });
const frame = fitPlanFrame(plan, 360, 300);
const radial = (azimuth: number, relative: readonly number[]) => ({
  kind: "radial" as const,
  elementId: "driven",
  from_m: [0, 0] as const,
  to_m: [4 * Math.cos(azimuth), 4 * Math.sin(azimuth)] as const,
  at_m: [0, 2, 4],
  relative,
});
const wires = [radial(0.5, [0.4, 0.2, 0]), radial(-0.5, [0.1, 0.05, 0])];

test("lines are wide where current is strong: the strongest widest, an end without current thinnest", () => {
  expect(mostCurrent(wires)).toBe(0.4);
  const lines = currentLines(frame, 0, wires, 0.4);
  // Four pieces: means of 0.3, 0.1, 0.075 and 0.025 of a most of 0.4, in eighths 6, 2, 2 (1.5 rounds up) and 1 (0.5).
  const widths = lines.map((line) => [line.width_px, line.d.split("M").length - 1]);
  expect(widths).toEqual([
    [0.5 + 4 * (1 / 8), 1],
    [0.5 + 4 * (2 / 8), 2],
    [0.5 + 4 * (6 / 8), 1],
  ]);
});

test("pieces run from the hub outwards and join end to end", () => {
  const [first] = currentLines(frame, 0, [radial(0, [1, 1, 1])], 1);
  const ends = first!.d.slice(1).split(/[ML]/);
  expect(ends[1]).toBe(ends[2]);
  expect(ends).toHaveLength(4);
});
