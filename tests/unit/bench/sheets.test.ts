import { describe, expect, test } from "vitest";
import { asMeasuredPlan, type SavedPlan, withFields, withSpacing } from "../../../engine/index.ts";
import { cutList, materials } from "../../../src/rooms/bench/sheets/cutList.ts";
import { materialRows } from "../../../src/rooms/bench/sheets/materialRows.ts";
import { radialRows } from "../../../src/rooms/bench/sheets/radialRows.ts";
import { stakeDrawing } from "../../../src/rooms/bench/sheets/stakeDrawing.ts";
import { stakeOut } from "../../../src/rooms/bench/sheets/stakeOut.ts";
import { keptDistance, lineDistance } from "../../../src/rooms/bench/sheets/tallest.ts";
import { withBench } from "../../../src/rooms/bench/useBenchEdit.ts";
import { demoPlan } from "../../../src/store/demoPlan.ts";
import { formatQuantity } from "../../../src/ui/quantity/formatQuantity.ts";
import { parseQuantity } from "../../../src/ui/quantity/parseQuantity.ts";

/** Driven 7.25 m, reflector 7.6 m, 5.9 m apart, 16 radials of 3.7 m each, beam to 62°. */
const plan: SavedPlan = demoPlan;
const allowance = { driven_percent: 3, reflector_percent: 4, radial_percent: 1 };

describe("cut list and materials", () => {
  test("uprights and radials with their allowance, by hand", () => {
    const list = cutList(plan, allowance);
    expect(list.map((one) => [one.part, one.count, one.finished_m, Number(one.cut_m.toFixed(6))])).toEqual([
      ["driven, upright", 1, 7.25, 7.4675],
      ["driven, radials", 16, expect.closeTo(3.7, 9), 3.737],
      ["reflector, upright", 1, 7.6, 7.904],
      ["reflector, radials", 16, expect.closeTo(3.7, 9), 3.737],
    ]);
  });
  test("materials sum what the list cuts, to the millimetre", () => {
    const list = cutList(withFields(plan, { radials: "bus", bonded: true }), allowance);
    const all = list.reduce((sum, one) => sum + one.count * one.cut_m, 0);
    expect(materials(list).reduce((sum, one) => sum + one.total_m, 0)).toBeCloseTo(all, 9);
    const rows = materialRows(plan, "metric", allowance);
    // 7.4675 + 7.904 and 32 × 3.737.
    expect(rows.slice(0, 2).map((row) => row.amount)).toEqual(["15.372 m", "119.584 m"]);
  });
  test("radials that end at the neighbour's field are cut shorter, and a bus is wire too", () => {
    const near = withFields(withSpacing(plan, 5), { radials: "bus", bonded: true });
    const list = cutList(near, allowance);
    const radials = list.filter((one) => one.part === "driven, radials");
    expect(radials.reduce((sum, one) => sum + one.count, 0)).toBe(16);
    expect(Math.min(...radials.map((one) => one.finished_m))).toBeLessThan(3.7);
    // Nearest to the beam's line a radial is 11.25° off it: 2.5 m / cos 11.25° to the midline.
    expect(Math.min(...radials.map((one) => one.finished_m))).toBeCloseTo(2.5 / Math.cos((11.25 * Math.PI) / 180), 3);
    expect(list.some((one) => one.part === "bus between the fields")).toBe(true);
    expect(list.find((one) => one.part === "bond from base to base")?.finished_m).toBeCloseTo(5, 9);
  });
  test("a plan that carries a correction gives lengths to cut, not lengths as they act", () => {
    const asMeasured = {
      date: "2026-05-31",
      elements: [{ elementId: "driven", lengthFactor: 1.02, series_ohm: { re: 3, im: 0 } }],
    };
    const corrected = withBench(asMeasuredPlan(plan, asMeasured), { asMeasured });
    const [driven] = cutList(corrected, allowance);
    expect(driven!.acts_m).toBeCloseTo(7.25 * 1.02, 12);
    expect(driven!.finished_m).toBeCloseTo(7.25, 12);
  });
  test("as printed in feet and inches, a length reads back to within the sixteenth that is rounded away", () => {
    for (const { cut_m } of cutList(plan, allowance)) {
      const back = parseQuantity(formatQuantity(cut_m, "length_m", "imperial"), "length_m", { units: "imperial" });
      expect(back.ok ? Math.abs(back.value - cut_m) : 1).toBeLessThanOrEqual(0.0254 / 16 + 1e-12);
    }
  });
  test("a load in the reflector's base is bought by its value", () => {
    const loaded: SavedPlan = {
      ...plan,
      elements: plan.elements.map((one) =>
        one.id === "reflector" ? { ...one, base: { kind: "loaded", resistance_ohm: 0.3, reactance_ohm: 27 } } : one,
      ),
    };
    // X / (2π f) = 27 / (2π · 10.12 MHz) = 0.4246 µH.
    expect(materialRows(loaded, "metric", allowance).find((row) => row.what.startsWith("coil"))?.amount).toBe(
      "0.42 µH",
    );
  });
});

describe("stake-out", () => {
  const { stakes, diagonals } = stakeOut(plan, -3.5);
  const stake = (letter: string) => stakes.find((one) => one.letter === letter)!;
  test("the reflector lies behind the beam, by tape and compass", () => {
    expect(stake("A")).toMatchObject({ distance_m: 0, trueBearing_deg: null, magneticBearing_deg: null });
    expect(stake("B").distance_m).toBeCloseTo(5.9, 12);
    expect(stake("B").trueBearing_deg).toBeCloseTo(242, 9);
    // A compass that points 3.5° west of north shows every true bearing 3.5° greater.
    expect(stake("B").magneticBearing_deg).toBeCloseTo(245.5, 9);
    expect(stakeOut(plan, undefined).stakes[1]!.magneticBearing_deg).toBeNull();
  });
  test("left is a quarter turn against the clock from the beam", () => {
    expect(stake("C").trueBearing_deg).toBeCloseTo(62 - 90 + 360, 9);
    expect(stake("D").trueBearing_deg).toBeCloseTo(152, 9);
  });
  test("walked by their bearings, the stakes are as far apart as the diagonals say", () => {
    const walked = (letter: string) => {
      const { distance_m, trueBearing_deg } = stake(letter);
      const a = ((trueBearing_deg ?? 0) * Math.PI) / 180;
      return [distance_m * Math.sin(a), distance_m * Math.cos(a)] as const;
    };
    expect(diagonals.length).toBeGreaterThan(3);
    for (const { from, to, distance_m } of diagonals) {
      const [a, b] = [walked(from), walked(to)];
      expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeCloseTo(distance_m, 9);
      expect([from, to]).not.toContain("A");
    }
  });
  test("what lies to the side is found there too", () => {
    const aside = {
      ...plan,
      elements: plan.elements.map((one) => (one.id === "reflector" ? { ...one, left_m: 2 } : one)),
    };
    const [, b] = stakeOut(aside, undefined).stakes;
    expect(b!.distance_m).toBeCloseTo(Math.hypot(5.9, 2), 12);
    expect(b!.trueBearing_deg).toBeCloseTo(242 + (Math.atan2(2, 5.9) * 180) / Math.PI, 9);
  });
  test("the sketch keeps every stake and fall circle on the paper, to one scale", () => {
    const { frame, bases, place } = stakeDrawing(plan, 680, 480);
    const [driven, reflector] = bases;
    expect(Math.hypot(driven!.at.x - reflector!.at.x, driven!.at.y - reflector!.at.y)).toBeCloseTo(
      5.9 * frame.pxPerM,
      6,
    );
    expect(driven!.fall_px).toBeCloseTo(8.25 * frame.pxPerM, 6);
    for (const { at, fall_px } of bases) {
      expect(Math.min(at.x - fall_px, 680 - at.x - fall_px, at.y - fall_px, 480 - at.y - fall_px)).toBeGreaterThan(0);
    }
    for (const one of stakes) {
      const { x, y } = place(one.forward_m, one.left_m);
      expect({ letter: one.letter, isOn: x > 0 && x < 680 && y > 0 && y < 480 }).toEqual({
        letter: one.letter,
        isOn: true,
      });
    }
  });
});

describe("radials by compass", () => {
  test("sixteen even radials, none along the beam, rising by bearing", () => {
    const [field] = radialRows(plan);
    const { radials, total_m } = field!;
    expect(total_m).toBeCloseTo(16 * 3.7, 9);
    radials.forEach((one, i) => {
      if (i > 0) expect(one.bearing_deg - radials[i - 1]!.bearing_deg).toBeCloseTo(22.5, 9);
      expect(Math.abs(one.bearing_deg - 62)).toBeGreaterThan(11);
    });
  });
});

describe("distances to keep", () => {
  test.each([
    [11.4, "metric", "11.4 m"],
    [11.41, "metric", "11.5 m"],
    [30 * 0.3048, "imperial", "30 ft"],
    [9.15, "imperial", "31 ft"],
  ] as const)("%d m in %s is never rounded down: %s", (m, units, text) => expect(keptDistance(m, units)).toBe(text));
  test("one and a half times the tallest, its raised base with it", () => {
    const raised = {
      ...plan,
      elements: plan.elements.map((one) => ({ ...one, radials: { ...one.radials, height_m: 2 } })),
    };
    expect(lineDistance(plan, "metric")).toBe("11.4 m");
    expect(lineDistance(raised, "metric")).toBe("14.4 m");
  });
});
