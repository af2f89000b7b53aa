import { expect, test } from "vitest";
import { solveWires } from "../../../engine/index.ts";

const codes = (radius_m: number, segments?: number) => {
  const solved = solveWires({
    frequency_Hz: 28.5e6,
    ground: { kind: "perfect" },
    wires: [
      { id: "tube", from_m: [0, 0, 0], to_m: [0, 0, 2.5], radius_m, ...(segments !== undefined && { segments }) },
    ],
    ports: [{ id: "base", wire: "tube", position: 0, termination: { kind: "voltage", volts: { re: 1, im: 0 } } }],
  });
  if (!solved.ok) throw new Error(solved.problems[0]!.message);
  return solved.value.notes.map((n) => n.code);
};

test("a wire too thick for eight segments of four radii says so, one that just fits does not", () => {
  expect(codes(2.5 / (4 * 7.5))).toContain("few-segments");
  expect(codes(2.5 / (4 * 8.01))).not.toContain("few-segments");
});

test("a count that was asked for is the asker's own affair", () => {
  expect(codes(1e-3, 4)).not.toContain("few-segments");
});
