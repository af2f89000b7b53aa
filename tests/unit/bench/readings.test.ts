import { describe, expect, test } from "vitest";
import {
  atBase,
  type BenchReading,
  type ExpectedStep,
  lineOfCable,
  lineReadout,
  swr,
  throughLead,
} from "../../../engine/index.ts";
import { expectedRows } from "../../../src/rooms/bench/measuring/expectedRows.ts";
import { pointFromSwr } from "../../../src/rooms/bench/measuring/pointFrom.ts";
import { pointsOfFile } from "../../../src/rooms/bench/measuring/pointsOfFile.ts";
import { readingAtBase } from "../../../src/rooms/bench/measuring/readingAtBase.ts";
import { readingFacts } from "../../../src/rooms/bench/measuring/readingFacts.ts";
import { readingsOfStep } from "../../../src/rooms/bench/measuring/stepReadings.ts";
import { okValue } from "../../support/okValue.ts";

const point = (frequency_MHz: number, resistance_ohm: number, reactance_ohm: number) => ({
  frequency_MHz,
  resistance_ohm,
  reactance_ohm,
});

describe("what a reading shows", () => {
  // X = 50 (f − 7.1), R = 40 + 10 (f − 7.1), by hand: X = 0 at 7.1, R there 40.
  const line = [7.0, 7.06, 7.16].map((f) => point(f, 40 + 10 * (f - 7.1), 50 * (f - 7.1)));
  test("X = 0 and R there lie on the line between two points; order and doubles do not matter", () => {
    const facts = readingFacts({ points: [line[2]!, line[0]!, point(7.06, 1, 1), line[1]!] }, 7.12);
    expect(facts.resonance_MHz).toBeCloseTo(7.1, 12);
    expect(facts.resonanceResistance_ohm).toBeCloseTo(40, 12);
    expect(facts.resistance_ohm).toBeCloseTo(40.2, 12);
    expect(facts.reactance_ohm).toBeCloseTo(1, 12);
    expect(facts.swr).toBeCloseTo(swr(40.2, 1, 50), 12);
  });
  test("one point where X is 0 is a resonance; one elsewhere is none, and says nothing of another frequency", () => {
    expect(readingFacts({ points: [point(7.05, 38, 0)] }, 7.1)).toMatchObject({
      resonance_MHz: 7.05,
      resonanceResistance_ohm: 38,
      resistance_ohm: null,
    });
    expect(readingFacts({ points: [point(7.1, 38, 12)] }, 7.1)).toMatchObject({
      resonance_MHz: null,
      resistance_ohm: 38,
      reactance_ohm: 12,
      leastSwr: null,
    });
  });
  test("a least SWR at the end of what was swept is not called the least", () => {
    const rising = [7.0, 7.1].map((f) => point(f, 50, 300 * (f - 6.9)));
    expect(readingFacts({ points: rising }, 7.1).leastSwr).toBeNull();
  });
});

describe("R and SWR instead of X", () => {
  test.each([
    [37, 25],
    [37, -25],
    [120, 60],
    [50, 0],
  ])("%d Ω with X %d Ω is found again from its SWR and side", (r, x) => {
    const found = okValue(pointFromSwr(7.1, r, swr(r, x, 50), x > 0));
    expect(found.reactance_ohm).toBeCloseTo(x, 6);
  });
  test("an SWR that R alone exceeds is refused with both figures", () => {
    const found = pointFromSwr(7.1, 25, 1.2, true);
    expect(found.ok ? "" : found.problems[0]!.message).toMatch(/25\.0 Ω alone makes SWR 2\.00.*cannot be 1\.20/);
  });
  test("R and SWR rounded as a meter prints them still give a point", () => {
    expect(okValue(pointFromSwr(7.1, 41.7, 1.2, true)).reactance_ohm).toBeGreaterThanOrEqual(0);
    expect(okValue(pointFromSwr(7.1, 41.6, 1.2, true)).reactance_ohm).toBe(0);
  });
});

describe("a reading through a cable", () => {
  const lead = { cable: { kind: "listed" as const, id: "rg-58c" }, length_m: 3 };
  test("is carried to the base: what the line's own readout puts in comes out", () => {
    const line = okValue(lineOfCable(lead.cable));
    const seen = okValue(lineReadout(line, lead.length_m, 7.1, { re: 45, im: 12 })).rigImpedance_ohm;
    const reading = { at: "lead", points: [point(7.1, seen.re, seen.im)] } as unknown as BenchReading;
    const [back] = readingAtBase(reading, lead)!;
    expect(back!.resistance_ohm).toBeCloseTo(45, 6);
    expect(back!.reactance_ohm).toBeCloseTo(12, 6);
    expect(okValue(atBase(lead, okValue(throughLead(lead, [point(7.1, 45, 12)]))))[0]!.reactance_ohm).toBeCloseTo(
      12,
      9,
    );
  });
  test("without a cable stated it is not used, and never as if it were at the base", () => {
    const reading = { at: "lead", points: [point(7.1, 45, 12)] } as unknown as BenchReading;
    expect(readingAtBase(reading, undefined)).toBeNull();
  });
});

describe("which step a reading belongs to", () => {
  const step = (number: number, state: ExpectedStep["state"], driven_m: number, reflector_m = 10.8) =>
    ({ number, state, lengths_m: { driven_m, reflector_m } }) as unknown as ExpectedStep;
  const steps = [
    step(2, "driven-alone", 10.5),
    step(3, "driven-alone", 10.2),
    step(4, "driven-alone", 10.2),
    step(5, "reflector-alone", 10.2, 11.2),
    step(6, "reflector-alone", 10.2, 10.8),
  ];
  const reading = (state: BenchReading["state"], driven_m: number, reflector_m = 10.8) =>
    ({ id: "r", state, lengths_m: { driven_m, reflector_m } }) as unknown as BenchReading;
  const homes = (one: BenchReading) =>
    steps.filter((s) => readingsOfStep(s, steps, [one]).length > 0).map((s) => s.number);
  test("its state's, with the nearest length of the wire that was read", () => {
    expect(homes(reading("driven-alone", 10.48))).toEqual([2]);
    expect(homes(reading("driven-alone", 10.24))).toEqual([3, 4]);
    expect(homes(reading("reflector-alone", 10.5, 11.15))).toEqual([5]);
    expect(homes(reading("reversed", 10.2))).toEqual([]);
  });
});

describe("what is expected, and a reading held against it", () => {
  const of = (value: number, low: number, high: number) => ({ value, low, high });
  const step = {
    figures: {
      resonance_MHz: of(7.1, 7.08, 7.13),
      resonanceResistance_ohm: of(40, 38, 44),
      resistance_ohm: of(40, 38, 44),
      reactance_ohm: of(2, -3, 6),
      swr: of(1.25, 1.2, 1.3),
      leastSwr: of(1.2, 1.2, 1.2),
      leastSwr_MHz: of(7.12, 7.1, 7.14),
      curve: [],
    },
    tolerance: { resistance_ohm: 2, reactance_ohm: 3, resonance_kHz: 10 },
  } as unknown as ExpectedStep;
  const row = (key: string) => expectedRows(step, 7.1).find((one) => one.key === key)!;
  test("within the soils' range and the tolerance nothing is said; outside, how far and to which side", () => {
    expect(row("resistance_ohm")).toMatchObject({ expected: "40.0 Ω", range: "38.0 to 44.0 Ω", tolerance: "± 2.0 Ω" });
    expect(row("resistance_ohm").judge(46).beyond).toBe(0);
    expect(row("resistance_ohm").judge(46.5)).toMatchObject({ text: "46.5 Ω", beyondText: "0.5 Ω above" });
    expect(row("resonance_MHz").judge(7.06).beyondText).toBe("10 kHz below");
    expect(row("resonance_MHz").judge(7.071).beyond).toBe(0);
  });
  test("a range of no width is not printed, and SWR is held against nothing", () => {
    expect(row("leastSwr").range).toBe("");
    expect(row("swr").judge(9).beyond).toBe(0);
  });
});

describe("points from a file", () => {
  const sweep = Array.from({ length: 1001 }, (_, i) => ({
    frequency_MHz: 6 + i / 500,
    impedance_ohm: { re: 40, im: i },
  }));
  test("those where the plan is measured, thinned evenly, both ends kept", () => {
    const points = okValue(pointsOfFile(sweep, { from_MHz: 6.5, to_MHz: 7.5 }));
    expect(points).toHaveLength(201);
    expect(points[0]!.frequency_MHz).toBe(6.5);
    expect(points.at(-1)!.frequency_MHz).toBe(7.5);
  });
  test("none there, or a resistance below 0, is refused with its figures", () => {
    const none = pointsOfFile(sweep, { from_MHz: 14, to_MHz: 15 });
    expect(none.ok ? "" : none.problems[0]!.message).toMatch(/6\.000 to 8\.000 MHz.*14\.000 and 15\.000/);
    const bad = pointsOfFile([{ frequency_MHz: 7.1, impedance_ohm: { re: -3, im: 0 } }], { from_MHz: 7, to_MHz: 8 });
    expect(bad.ok ? "" : bad.problems[0]!.message).toMatch(/7\.100 MHz.*-3\.0 ohm/);
  });
});
