import { expect, test } from "vitest";
import { chokeAdvice, feedStress, lineChain } from "../../../engine/index.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";

test("voltages and currents at the base, and the most along the line", () => {
  const z = { re: 25, im: 40 };
  const found = okValue(feedStress(z, 400, 50));
  expect(found.base_Arms).toBeCloseTo(4, 12);
  expect(found.base_Vrms).toBeCloseTo(4 * Math.hypot(25, 40), 12);
  expect(found.base_Apeak / found.base_Arms).toBeCloseTo(Math.SQRT2, 12);
  // The most along the line, looked for step by step with chain matrices.
  const line = aLine(50);
  const steps = Array.from({ length: 4000 }, (_, i) => {
    const { a, b, c, d } = lineChain(line, ((i / 4000) * (0.66 * 299.792458)) / 7.1 / 2, 7.1);
    const times = (m: typeof a) => ({ re: m.re * z.re - m.im * z.im, im: m.re * z.im + m.im * z.re });
    const [va, ic] = [times(a), times(c)];
    return { volts: 4 * Math.hypot(va.re + b.re, va.im + b.im), amperes: 4 * Math.hypot(ic.re + d.re, ic.im + d.im) };
  });
  expect(found.lineMost_Vrms).toBeCloseTo(Math.max(...steps.map((s) => s.volts)), 2);
  expect(found.lineMost_Arms).toBeCloseTo(Math.max(...steps.map((s) => s.amperes)), 4);
  expect(found.lineMost_Vpeak / found.lineMost_Vrms).toBeCloseTo(Math.SQRT2, 12);
});

test("a match into 50 ohm at 100 W: 70.7 V", () => {
  const found = okValue(feedStress({ re: 50, im: 0 }, 100, 50));
  expect(found.lineMost_Vrms).toBeCloseTo(Math.sqrt(5000), 10);
  expect(found.swr).toBe(1);
});

test("bad input", () => {
  const bad = feedStress({ re: 0, im: Number.POSITIVE_INFINITY }, -1, 0);
  expect(bad.ok ? [] : bad.problems.map((p) => p.where)).toEqual([
    "antenna_ohm.re",
    "antenna_ohm.im",
    "power_W",
    "line_ohm",
  ]);
});

test("choke: a few hundred ohm over a dense screen, thousands for few or raised radials", () => {
  const dense = chokeAdvice(16, false);
  expect(dense.least_ohm).toBeGreaterThanOrEqual(300);
  expect(dense.least_ohm).toBeLessThanOrEqual(1000);
  for (const sparse of [chokeAdvice(15, false), chokeAdvice(60, true)]) {
    expect(sparse.least_ohm).toBeGreaterThanOrEqual(2000);
    expect(sparse.better_ohm).toBeGreaterThan(sparse.least_ohm);
  }
  expect(dense.provenance).toContain("common practice");
  expect([dense.character, dense.place]).toEqual(["resistive", "feedpoint"]);
});
