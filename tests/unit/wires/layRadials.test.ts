import { describe, expect, test } from "vitest";
import {
  type FieldMeeting,
  layRadials,
  type Plan,
  readPlan,
  solvePlan,
  withFields,
  withRadials,
  withStake,
} from "../../../engine/index.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { okValue } from "../../support/okValue.ts";

const request = { azimuthCutElevation_deg: 8, pathElevation_deg: 8, rungs_deg: [8], rearSector_deg: 120 };
/** Two fields of eight 6 m radials, 5.8 m or so apart: they overlap. */
const pair = withRadials(demoPlan, { count: 8, length_m: 6 });
const midway_m = (pair.elements[0]!.forward_m + pair.elements[1]!.forward_m) / 2;
const laid = (plan: Plan, at_m = 0.01) =>
  layRadials(
    plan,
    plan.elements.map(() => at_m),
  );
const meeting = (radials: FieldMeeting["radials"], bonded = false) => withFields(pair, { radials, bonded });
const length = ({ from_m, to_m }: ReturnType<typeof laid>[number]) =>
  Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1]);
const solved = (plan: Plan) => {
  const { feeds, notes, efficiency } = okValue(solvePlan(plan));
  return { z: feeds[0]!.impedance_ohm, notes: notes.map((n) => n.code), efficiency };
};

describe("radials of two elements", { timeout: 60_000 }, () => {
  test("overlapping: all as long as asked, none across the hub's own axis", () => {
    const wires = laid(pair);
    expect(wires).toHaveLength(16);
    for (const wire of wires) expect(length(wire)).toBeCloseTo(6, 12);
  });

  test("stopping: none comes nearer than 5 cm to the line midway, those that would not are left alone", () => {
    const wires = laid(meeting("stop"));
    expect(wires).toHaveLength(16);
    const short = wires.filter((wire) => length(wire) < 6 - 1e-9);
    expect(short.length).toBeGreaterThan(0);
    for (const { to_m } of short) expect(Math.abs(to_m[0] - midway_m)).toBeCloseTo(0.05, 9);
    for (const wire of wires) {
      const side = Math.sign(wire.from_m[0] - midway_m);
      expect(side * (wire.to_m[0] - midway_m)).toBeGreaterThan(0.05 - 1e-9);
    }
  });

  test("a bus: radials end on it at shared joints, and it runs from the first to the last", () => {
    const wires = laid(meeting("bus"));
    const bus = wires.filter((wire) => wire.kind === "bus");
    const ends = wires.filter((wire) => wire.kind === "radial" && length(wire) < 6 - 1e-9).map((wire) => wire.to_m);
    // Fields alike: the radials of both meet the line at the same places.
    const places = [...new Set(ends.map((end) => end[1].toFixed(6)))];
    expect(ends).toHaveLength(2 * places.length);
    expect(bus).toHaveLength(places.length - 1);
    for (const { from_m, to_m } of bus) {
      expect(from_m[0]).toBeCloseTo(midway_m, 9);
      expect(to_m[0]).toBeCloseTo(midway_m, 9);
    }
  });

  test("cut or not, a radial keeps its direction, on the side it was laid", () => {
    // To the left only: a line midway seen the wrong way round would turn them over.
    const left = [20, 50, 80, 110, 140, 170].map((direction_deg) => ({ direction_deg, length_m: 6 }));
    for (const wire of laid(withFields(withRadials(pair, { each: left }), { radials: "bus" }))) {
      if (wire.kind !== "radial") continue;
      const turned = (180 / Math.PI) * Math.atan2(wire.to_m[1] - wire.from_m[1], wire.to_m[0] - wire.from_m[0]);
      expect(Math.min(...left.map((one) => Math.abs(one.direction_deg - turned)))).toBeLessThan(0.5);
    }
  });

  test("a bond joins the bases, and the bus where it crosses it", () => {
    const [alone] = laid(meeting("overlap", true)).filter((wire) => wire.kind === "bond");
    expect(length(alone!)).toBeCloseTo(Math.abs(pair.elements[0]!.forward_m - pair.elements[1]!.forward_m), 12);
    const crossed = laid(meeting("bus", true));
    expect(crossed.filter((wire) => wire.kind === "bond")).toHaveLength(2);
    const joint = crossed.find((wire) => wire.kind === "bond")!.to_m;
    const meets = crossed.filter(
      (wire) => wire.kind === "bus" && [wire.from_m, wire.to_m].some((p) => p[1] === joint[1]),
    );
    expect(meets).toHaveLength(2);
  });

  test("every way of meeting is solved, on the soil and in it, and moves the feed a little", () => {
    for (const height_m of [0, -0.05]) {
      const base = solved(withRadials(pair, { height_m }));
      for (const radials of ["overlap", "stop", "bus"] as const)
        for (const bonded of [false, true]) {
          const plan = withRadials(meeting(radials, bonded), { height_m });
          const got = solved(plan);
          const moved = Math.hypot(got.z.re - base.z.re, got.z.im - base.z.im);
          expect(moved, `${radials} ${bonded} ${height_m}`).toBeLessThan(12);
          if (radials !== "overlap" || bonded) expect(moved).toBeGreaterThan(0.01);
          expect(got.notes.includes("radials-lifted")).toBe(radials === "overlap");
        }
    }
  });

  test("a bus needs one height: named with both", () => {
    const r = solvePlan(withRadials(meeting("bus"), { height_m: 1 }, "reflector"));
    expect(r.ok).toBe(false);
    const [problem] = r.ok ? [] : r.problems;
    expect(problem!.code).toBe("bus-needs-one-height");
    expect(problem!.message).toContain("1 m");
    expect(problem!.message).toContain("0 m");
  });
});

describe("radials laid one by one", { timeout: 60_000 }, () => {
  test("equal ones listed are the same as a count", () => {
    const plan = withRadials(demoPlan, { count: 4, length_m: 5 });
    const each = [45, 135, 225, 315].map((direction_deg) => ({ direction_deg, length_m: 5 }));
    const listed = withRadials(plan, { each });
    expect(listed.elements[0]!.radials).toMatchObject({ count: 4, length_m: 5, each });
    const [a, b] = [solved(plan), solved(listed)];
    expect(b.z.re).toBeCloseTo(a.z.re, 9);
    expect(b.z.im).toBeCloseTo(a.z.im, 9);
    // A new count makes them equal again.
    expect(withRadials(listed, { count: 6 }).elements[0]!.radials.each).toBeUndefined();
    expect(withRadials(listed, { diameter_mm: 1 }).elements[0]!.radials.each).toEqual(each);
  });

  test("a gap in the field, as of a house, shows in the currents and in the pattern", () => {
    const each = [40, 100, 160, 220].map((direction_deg) => ({ direction_deg, length_m: 5 }));
    const { radialCurrents, azimuthCut } = okValue(readPlan(withRadials(demoPlan, { each }), request));
    expect(radialCurrents).toHaveLength(8);
    expect(radialCurrents![0]!.to_m[1] - radialCurrents![0]!.from_m[1]).toBeCloseTo(
      5 * Math.sin((40 * Math.PI) / 180),
      9,
    );
    const { gain_dBi } = azimuthCut;
    expect(Math.abs(gain_dBi[90]! - gain_dBi[270]!)).toBeGreaterThan(0.01);
  });

  test("two on one another: both are named", () => {
    const each = [10, 10.0001].map((direction_deg) => ({ direction_deg, length_m: 5 }));
    const r = solvePlan(withRadials(demoPlan, { each }));
    const messages = r.ok ? [] : r.problems.map((p) => p.message);
    expect(messages.some((m) => m.includes("radial 1") && m.includes("radial 2"))).toBe(true);
  });
});

describe("a ground stake", { timeout: 60_000 }, () => {
  test("carries what few radials leave it, hardly helps among many, and serves alone, badly", () => {
    const stake = { length_m: 1.2, diameter_mm: 15 };
    const two = withRadials(demoPlan, { count: 2, length_m: 2 });
    const alone = solved(withStake(withRadials(demoPlan, { count: 0 }), stake));
    const few = solved(withStake(two, stake));
    const many = solved(withStake(withRadials(demoPlan, { count: 32 }), stake));
    const manyWithout = solved(withRadials(demoPlan, { count: 32 }));
    const without = solved(two);
    const withFew = Math.hypot(few.z.re - without.z.re, few.z.im - without.z.im);
    const withMany = Math.hypot(many.z.re - manyWithout.z.re, many.z.im - manyWithout.z.im);
    expect(withFew).toBeGreaterThan(3);
    expect(withMany).toBeLessThan(0.2 * withFew);
    expect(alone.efficiency).toBeLessThan(0.6 * manyWithout.efficiency);
  });
});
