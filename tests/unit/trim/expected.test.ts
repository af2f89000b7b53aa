import { describe, expect, test } from "vitest";
import { defaultAllowance, type ExpectedSheet, expectedReadings, type Plan, solvePlan } from "../../../engine/index.ts";
import { driveTrial } from "../../../engine/sweep/trial/driveTrial.ts";
import { meterReading } from "../../../engine/trim/meterReading.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";
import { okValue } from "../../support/okValue.ts";

const perfect: Plan = { ...twoElements, ground: { kind: "perfect" } };
const sheetOf = (plan: Plan): ExpectedSheet =>
  okValue(driveTrial(okValue(expectedReadings({ plan, allowance: defaultAllowance }))));
const step = (sheet: ExpectedSheet, kind: string) => sheet.steps.find((s) => s.kind === kind)!;
const withBases = (plan: Plan, ...kinds: readonly ("fed" | "open" | "joined")[]): Plan => ({
  ...plan,
  elements: plan.elements.map((element, i) => ({ ...element, base: { kind: kinds[i]! } })),
});

describe.each([
  ["perfect ground", perfect],
  ["soil, preview", twoElements],
  ["free of loss, loaded reflector", loaded(perfect)],
])("the sheet over %s", (_, plan) => {
  const sheet = sheetOf(plan);
  const solved = (of: Plan) => okValue(solvePlan(of)).feeds[0]!.impedance_ohm;

  // The curves are checked to error_ohm at their worst place; twice that is allowed elsewhere.
  const near = () => 2 * sheet.error_ohm + 1e-6;

  test("each state at the plan's frequency is what a solve of the plan in that state gives", () => {
    const states = [
      ["trim-driven", withBases(plan, "fed", "open")],
      ["trim-reflector", withBases(plan, "open", "fed")],
      ["reflector-joined", plan],
    ] as const;
    for (const [kind, as] of states) {
      const { figures } = step(sheet, kind);
      const { re, im } = solved(as);
      expect(Math.abs(figures!.resistance_ohm.value - re)).toBeLessThan(near());
      expect(Math.abs(figures!.reactance_ohm.value - im)).toBeLessThan(near());
    }
    expect(sheet.error_ohm).toBeLessThan(0.1);
  });

  test("at the stated resonance a solve has no reactance", () => {
    const { figures } = step(sheet, "trim-driven");
    // The wires are cut as at the plan's own frequency there, by a few segments more or less: 0.05 ohm.
    const at = solved({ ...withBases(plan, "fed", "open"), frequency_MHz: figures!.resonance_MHz!.value });
    expect(Math.abs(at.im)).toBeLessThan(near() + 0.05);
    expect(Math.abs(at.re - figures!.resonanceResistance_ohm!.value)).toBeLessThan(near() + 0.05);
  });

  test("what is cut off by the stated millimetres a kilohertz brings resonance there", () => {
    const { cut, figures } = step(sheet, "trim-driven");
    // Back from a tenth of the allowance: the slope of the whole cut differs from that near its end by length over
    // frequency, 3 % over 3 % of length, half of it between the middle and the end.
    const off_m = 0.1 * cut!.whole_mm * 1e-3;
    const longer = {
      ...withBases(plan, "fed", "open"),
      elements: withBases(plan, "fed", "open").elements.map((e, i) => (i ? e : { ...e, height_m: e.height_m + off_m })),
    };
    const f = figures!.resonance_MHz!.value - (1e3 * off_m) / cut!.mmPerKHz / 1e3;
    const { tolerance } = step(sheet, "trim-driven");
    const slope_ohmPerMHz = (1e3 * tolerance!.reactance_ohm) / tolerance!.resonance_kHz;
    const missed_MHz = Math.abs(solved({ ...longer, frequency_MHz: f }).im) / slope_ohmPerMHz;
    expect(missed_MHz).toBeLessThan(0.03 * (figures!.resonance_MHz!.value - f) + 0.0005);
  });

  test("the current ratio and the mutual impedance are those of a solve", () => {
    const { currentRatio } = step(sheet, "reflector-joined");
    const { re, im } = okValue(solvePlan(plan)).baseCurrents[1]!.current;
    expect(currentRatio!.magnitude).toBeCloseTo(Math.hypot(re, im), 3);
    expect(currentRatio!.phase_deg).toBeCloseTo((Math.atan2(im, re) * 180) / Math.PI, 1);
  });
});

function loaded(plan: Plan): Plan {
  const [front, back] = plan.elements;
  const base = { kind: "loaded", resistance_ohm: 0.5, reactance_ohm: 27 } as const;
  return { ...plan, elements: [front!, { ...back!, height_m: front!.height_m, base }] };
}

describe("figures of practice, perfect ground, 2 mm wire", () => {
  const tall = { ...perfect, frequency_MHz: 7.1 };
  const sheet = sheetOf({ ...tall, elements: tall.elements.map((e, i) => ({ ...e, height_m: i ? 10.66 : 10.27 })) });

  test("1.4 to 1.5 mm a kilohertz at 7.1 MHz (common practice, no source; dL/df = L/f gives 1.45)", () => {
    const { mmPerKHz } = step(sheet, "trim-driven").cut!;
    expect(mmPerKHz).toBeGreaterThan(1.4);
    expect(mmPerKHz).toBeLessThan(1.5);
  });
  test("10.27 m resonates at 7.1 MHz with 36.05 ohm (an independent converged solution, 0.4 % of the height)", () => {
    const { resonance_MHz, resonanceResistance_ohm } = step(sheet, "trim-driven").figures!;
    expect(Math.abs(resonance_MHz!.value - 7.1)).toBeLessThan(0.004 * 7.1);
    // The open reflector near by moves R: with it away the solution says 36.05.
    expect(Math.abs(resonanceResistance_ohm!.value - 36.05)).toBeLessThan(0.3);
  });
  test("the reflector alone resonates 3 to 4 percent below, and joining it pulls the driven's X = 0 down by 50 to 150 kHz", () => {
    const alone = step(sheet, "trim-reflector").figures!.resonance_MHz!.value;
    expect(alone / 7.1).toBeGreaterThan(0.955);
    expect(alone / 7.1).toBeLessThan(0.975);
    const joined = step(sheet, "reflector-joined").figures!.resonance_MHz!.value;
    expect(1e3 * (step(sheet, "trim-driven").figures!.resonance_MHz!.value - joined)).toBeGreaterThan(50);
    expect(1e3 * (step(sheet, "trim-driven").figures!.resonance_MHz!.value - joined)).toBeLessThan(150);
  });
});

describe("the procedure", () => {
  const kinds = (plan: Plan) => sheetOf(plan).steps.map((s) => s.kind);
  test("numbers run from 1, and the base with the meter is the one the state says", () => {
    const { steps } = sheetOf(loaded(perfect));
    expect(steps.map((s) => s.number)).toEqual(steps.map((_, i) => i + 1));
    expect(steps.map((s) => s.kind)).toContain("reversed");
    for (const { state, bases } of steps) {
      const meters = bases.filter(({ base }) => base === "meter").map(({ elementId }) => elementId);
      const wanted =
        state === undefined ? [] : [state === "reflector-alone" || state === "reversed" ? "reflector" : "driven"];
      expect(meters).toEqual(wanted);
    }
    const bases = steps.find((s) => s.kind === "reversed")!.bases.map(({ base }) => base);
    expect(bases).toEqual(["loaded", "meter"]);
  });
  test("a pair of equal elements reads the same reversed, over any ground of its own kind", () => {
    const { steps } = sheetOf(loaded(perfect));
    const at = (kind: string) => steps.find((s) => s.kind === kind)!.figures!;
    expect(at("reversed").resistance_ohm.value).toBeCloseTo(at("reflector-joined").resistance_ohm.value, 6);
    expect(at("reversed").reactance_ohm.value).toBeCloseTo(at("reflector-joined").reactance_ohm.value, 6);
  });
  test("unequal elements are not reversed; one vertical has steps of its own", () => {
    expect(kinds(perfect)).not.toContain("reversed");
    expect(kinds({ ...perfect, elements: perfect.elements.slice(0, 1) })).toEqual([
      "fit-long",
      "first-driven-alone",
      "trim-driven",
      "ground-loss",
      "record",
      "recheck",
    ]);
  });
  test("soil gives a range that holds the expected figure; perfect ground gives none", () => {
    const figures = step(sheetOf(twoElements), "reflector-joined").figures!;
    for (const key of ["resistance_ohm", "reactance_ohm", "resonance_MHz"] as const) {
      const { value, low, high } = figures[key]!;
      expect(low < high && low <= value && value <= high).toBe(true);
    }
    const { resistance_ohm: same } = step(sheetOf(perfect), "reflector-joined").figures!;
    expect([same.low, same.high]).toEqual([same.value, same.value]);
  });
  test("the picture comes with the plan's own soil first, and grows", () => {
    const trial = okValue(expectedReadings({ plan: twoElements, allowance: defaultAllowance }));
    const first = okValue(trial(() => undefined));
    expect(first.picture).toBeNull();
    expect(first.asks.length).toBeGreaterThan(10);
    expect(sheetOf(twoElements).soils.map(({ id }) => id)).toEqual(["planned", "drier", "wetter"]);
  });
  test("two fed elements and a wild allowance are refused together", () => {
    const plan = withBases(perfect, "fed", "fed");
    const bad = expectedReadings({ plan, allowance: { ...defaultAllowance, driven_percent: 60 } });
    expect(bad.ok ? [] : bad.problems.map((p) => [p.code, p.where])).toEqual([
      ["out-of-range", "allowance.driven_percent"],
      ["not-one-fed", "elements"],
    ]);
  });
  test("a state with a reflector asks for one", () => {
    const z = [[{ re: 36, im: 0 }]];
    expect(() => meterReading(perfect, { driven: 0 }, z, "reflector-alone")).toThrow(RangeError);
  });
});
