import { expect, test } from "vitest";
import { ladderRows } from "../../../src/charts/ladderRows.ts";
import { ladderScale } from "../../../src/charts/ladderScale.ts";
import { sampleReadout } from "./sampleReadout.ts";

test("rungs from the top down, each with the difference to the baseline's same rung", () => {
  const rows = ladderRows(sampleReadout(4), sampleReadout(1.5));
  expect(rows.map((r) => r.elevation_deg)).toEqual([30, 20, 15, 10, 8, 5, 3]);
  for (const r of rows) expect(r.difference_dB).toBeCloseTo(2.5, 9);
  const live = sampleReadout(4).ladder.find((r) => r.elevation_deg === 10)!;
  expect(rows[3]).toMatchObject({
    now_dBi: live.forward_dBi,
    frontToBack_dB: live.frontToBack_dB,
    frontToRear_dB: live.frontToRear_dB,
  });
});

test("the path's elevation has one rung, whether or not it is among the standing ones", () => {
  const among = ladderRows(sampleReadout(), null);
  expect(among.filter((r) => r.carriesPath).map((r) => r.elevation_deg)).toEqual([8]);
  expect(among).toHaveLength(7);
  const between = sampleReadout(4, [3, 5, 10]);
  const rows = ladderRows(between, sampleReadout(1, [3, 5, 10]));
  expect(rows.map((r) => r.elevation_deg)).toEqual([10, 8, 5, 3]);
  expect(rows[1]!.difference_dB).toBeCloseTo(3, 9);
});

test("a band about the path is carried by every rung in it", () => {
  const rows = ladderRows(sampleReadout(), null, { from_deg: 5, to_deg: 10 });
  expect(rows.filter((r) => r.carriesPath).map((r) => r.elevation_deg)).toEqual([10, 8, 5]);
});

test("no baseline, or a rung it does not have, gives no difference rather than a wrong one", () => {
  for (const r of ladderRows(sampleReadout(), null)) {
    expect(r.baseline_dBi).toBeNaN();
    expect(r.difference_dB).toBeNaN();
  }
  const rows = ladderRows(sampleReadout(), sampleReadout(1, [3]));
  expect(rows.find((r) => r.elevation_deg === 3)!.difference_dB).toBeCloseTo(3, 9);
  expect(rows.find((r) => r.elevation_deg === 30)!.difference_dB).toBeNaN();
});

test("one scale for all rungs, on multiples of 5 dB, that a small change does not move", () => {
  const scale = ladderScale(ladderRows(sampleReadout(4), sampleReadout(1)));
  // 3 degrees up the quieter one is at 1 + 20 lg(sin 6°) − 0.01 = −18.6 dBi; the loudest is under 5.
  expect(scale.from_dBi).toBe(-20);
  expect(scale.to_dBi).toBe(5);
  for (const r of ladderRows(sampleReadout(4), sampleReadout(1))) {
    expect(scale.place(r.now_dBi)).toBeGreaterThanOrEqual(0);
    expect(scale.place(r.baseline_dBi)).toBeLessThanOrEqual(1);
  }
  expect(scale.place(scale.from_dBi)).toBe(0);
  expect(scale.place(scale.to_dBi)).toBe(1);
  expect(scale.place(Number.NEGATIVE_INFINITY)).toBeNaN();
  const nudged = ladderScale(ladderRows(sampleReadout(4.01), sampleReadout(1)));
  expect([nudged.from_dBi, nudged.to_dBi]).toEqual([scale.from_dBi, scale.to_dBi]);
});

test("with nothing to show the scale is still one", () => {
  const empty = ladderScale([]);
  expect(empty.to_dBi - empty.from_dBi).toBeGreaterThanOrEqual(10);
});
