import { describe, expect, test } from "vitest";
import {
  antennaImpedance,
  type LineType,
  lineChain,
  lineReadout,
  lineTypes,
  lineWavelength_m,
  makeLine,
  rigImpedance,
  toReflection,
} from "../../../engine/index.ts";
import { fitLineLoss } from "../../../engine/network/line/fitLineLoss.ts";
import { DB_PER_NP, propagation } from "../../../engine/network/line/propagation.ts";
import { aLine } from "../../support/aLine.ts";
import { okValue } from "../../support/okValue.ts";

const point = (frequency_MHz: number, loss_dBPer100m: number) => ({ frequency_MHz, loss_dBPer100m });
const codes = (type: LineType) => {
  const made = makeLine(type);
  return made.ok ? [] : made.problems.map((p) => [p.code, p.where]);
};

describe("loss fitted to k₁√f + k₂f", () => {
  test("through two points exactly", () => {
    const fit = fitLineLoss([point(10, 4.6), point(50, 10.8)]);
    for (const [f, loss] of [
      [10, 4.6],
      [50, 10.8],
    ] as const)
      expect(fit.root_dBPer100m * Math.sqrt(f) + fit.linear_dBPer100m * f).toBeCloseTo(loss, 12);
  });

  test("one point, or several at one frequency: √f alone", () => {
    expect(fitLineLoss([point(9, 3)])).toEqual({ root_dBPer100m: 1, linear_dBPer100m: 0 });
    const fit = fitLineLoss([point(9, 2), point(9, 4)]);
    expect(fit.root_dBPer100m).toBeCloseTo(1, 12);
    expect(fit.linear_dBPer100m).toBe(0);
  });

  test("neither constant below zero, and no better pair above zero", () => {
    const slow = [point(10, 3), point(40, 5)]; // grows less than √f
    const fast = [point(10, 1), point(40, 9)]; // grows more than f
    expect(fitLineLoss(slow).linear_dBPer100m).toBe(0);
    expect(fitLineLoss(fast).root_dBPer100m).toBe(0);
    const miss = (points: typeof slow, root: number, linear: number) =>
      points.reduce(
        (sum, p) => sum + (root * Math.sqrt(p.frequency_MHz) + linear * p.frequency_MHz - p.loss_dBPer100m) ** 2,
        0,
      );
    for (const points of [slow, fast, [point(7, 2), point(14, 3.1), point(50, 6.6)]]) {
      const { root_dBPer100m: root, linear_dBPer100m: linear } = fitLineLoss(points);
      const best = miss(points, root, linear);
      for (const [dr, dl] of [
        [1e-3, 0],
        [-1e-3, 0],
        [0, 1e-3],
        [0, -1e-3],
      ] as const)
        if (root + dr >= 0 && linear + dl >= 0) expect(miss(points, root + dr, linear + dl)).toBeGreaterThan(best);
    }
  });

  test("nothing to fit is a programmer's mistake", () => {
    expect(() => fitLineLoss([])).toThrow(RangeError);
  });
});

describe("a line made from its description", () => {
  const good: LineType = { id: "x", name: "x", impedance_ohm: 50, velocityFactor: 0.66, loss: [point(10, 2)] };

  test("every listed cable can be made, has its own id and says where it comes from", () => {
    for (const type of lineTypes) expect(codes(type)).toEqual([]);
    expect(new Set(lineTypes.map((t) => t.id)).size).toBe(lineTypes.length);
    for (const type of lineTypes) expect(type.source).toMatch(/read|from memory/);
    // What is from memory says so.
    expect(lineTypes.find((t) => t.id === "rg-11a")!.source).toContain("memory");
  });

  test("what a person can put right is named, with value and limit", () => {
    expect(codes(good)).toEqual([]);
    expect(codes({ ...good, impedance_ohm: 0 })).toEqual([["out-of-range", "line.impedance_ohm"]]);
    expect(codes({ ...good, velocityFactor: 0 })).toEqual([["out-of-range", "line.velocityFactor"]]);
    expect(codes({ ...good, velocityFactor: 1 })).toEqual([]);
    expect(codes({ ...good, velocityFactor: 1.01 })).toEqual([["out-of-range", "line.velocityFactor"]]);
    expect(codes({ ...good, loss: [point(10, -1)] })).toEqual([["out-of-range", "line.loss[0].loss_dBPer100m"]]);
    expect(codes({ ...good, loss: [point(0, 1)] })).toEqual([["out-of-range", "line.loss[0].frequency_MHz"]]);
    expect(codes({ ...good, loss: [] })).toEqual([["missing", "line.loss"]]);
    expect(codes({ ...good, loss: { root_dBPer100m: -1, linear_dBPer100m: Number.NaN } })).toEqual([
      ["out-of-range", "line.loss.root_dBPer100m"],
      ["not-finite", "line.loss.linear_dBPer100m"],
    ]);
    const two = makeLine({ ...good, velocityFactor: 1.5, impedance_ohm: Number.POSITIVE_INFINITY });
    expect(two.ok).toBe(false);
    if (!two.ok) {
      expect(two.problems.map((p) => p.where)).toEqual(["line.impedance_ohm", "line.velocityFactor"]);
      expect(two.problems[1]!.message).toBe("The velocity factor is 1.5; it must be above 0 and at most 1.");
    }
  });
});

describe("along a line", () => {
  const line = aLine(50);
  const wave = lineWavelength_m(line, 7.1);
  const load = { re: 26, im: 10.4 };

  test("without loss the size of the reflection stays", () => {
    const size = (z: { re: number; im: number }) => Math.hypot(toReflection(z, 50).re, toReflection(z, 50).im);
    for (const length of [0.1, 3, 17, 200])
      expect(size(rigImpedance(lineChain(line, length, 7.1), load))).toBeCloseTo(size(load), 12);
  });

  test("a quarter wave inverts, a half wave leaves alone, a shorted eighth shows jZ₀", () => {
    const inverted = rigImpedance(lineChain(line, wave / 4, 7.1), load);
    const size2 = load.re ** 2 + load.im ** 2;
    expect(inverted.re).toBeCloseTo((2500 * load.re) / size2, 10);
    expect(inverted.im).toBeCloseTo((-2500 * load.im) / size2, 10);
    const same = rigImpedance(lineChain(line, wave / 2, 7.1), load);
    expect(same.re).toBeCloseTo(load.re, 10);
    expect(same.im).toBeCloseTo(load.im, 10);
    const shorted = rigImpedance(lineChain(line, wave / 8, 7.1), { re: 0, im: 0 });
    expect(shorted.re).toBeCloseTo(0, 12);
    expect(shorted.im).toBeCloseTo(50, 10);
    const halves = rigImpedance(lineChain(line, wave / 4, 7.1, 2), load);
    expect(halves.re).toBeCloseTo((625 * load.re) / size2, 10);
  });

  test("there and back through loss is where it began; ad − bc = 1", () => {
    const lossy = aLine(50, 0.66, { loss: [point(10, 4.6), point(50, 10.8)] });
    for (const length of [1, 30, 120]) {
      const chain = lineChain(lossy, length, 7.1);
      const back = antennaImpedance(chain, rigImpedance(chain, load));
      expect(Math.hypot(back.re - load.re, back.im - load.im)).toBeLessThan(1e-9);
      const { a, b, c, d } = chain;
      expect(a.re * d.re - a.im * d.im - b.re * c.re + b.im * c.im).toBeCloseTo(1, 9);
      expect(a.re * d.im + a.im * d.re - b.re * c.im - b.im * c.re).toBeCloseTo(0, 9);
    }
  });

  test("through a two-port that is not the same from both sides", () => {
    // 20 + j5 ohm in series at the rig, then 0.01 S across: (1 + zy, z; y, 1).
    const skew = { a: { re: 1.2, im: 0.05 }, b: { re: 20, im: 5 }, c: { re: 0.01, im: 0 }, d: { re: 1, im: 0 } };
    const rig = rigImpedance(skew, { re: 100, im: 0 });
    expect(rig.re).toBeCloseTo(20 + 50, 12);
    expect(rig.im).toBeCloseTo(5, 12);
    const back = antennaImpedance(skew, rig);
    expect(back.re).toBeCloseTo(100, 10);
    expect(back.im).toBeCloseTo(0, 10);
  });

  test("the angle of Z₀: metal loss makes it capacitive, equal losses real, insulation inductive; never active", () => {
    const of = (root: number, linear: number) =>
      propagation(aLine(50, 0.66, { loss: { root_dBPer100m: root, linear_dBPer100m: linear } }), 4);
    expect(of(1.4, 0).impedance_ohm.im).toBeLessThan(0);
    expect(of(0, 0.7).impedance_ohm.im).toBeGreaterThan(0);
    expect(of(1, 0.5).impedance_ohm.im).toBeCloseTo(0, 12); // 1·√4 = 0.5·4
    // Against the line equations themselves: R and G from the two losses, L and C from Z₀ and velocity, at first order.
    const { gamma, impedance_ohm: z } = of(1.4, 0.1);
    const metal = (1.4 * 2) / (100 * DB_PER_NP);
    const insulation = (0.1 * 4) / (100 * DB_PER_NP);
    const product = (u: typeof z, v: typeof z) => ({ re: u.re * v.re - u.im * v.im, im: u.re * v.im + u.im * v.re });
    const seriesPerMetre = product(gamma, z);
    expect(seriesPerMetre.re).toBeCloseTo(2 * 50 * metal, 9);
    const y = { re: z.re / (z.re ** 2 + z.im ** 2), im: -z.im / (z.re ** 2 + z.im ** 2) };
    expect(product(gamma, y).re).toBeCloseTo((2 * insulation) / 50, 6);
    expect(product(gamma, y).re).toBeGreaterThan(0);
    const { beta, alpha } = { beta: gamma.im, alpha: gamma.re };
    expect(beta).toBeCloseTo((2 * Math.PI * 4e6) / (0.66 * 299_792_458), 12);
    expect(alpha).toBeCloseTo(metal + insulation, 12);
  });

  test("a meter at the rig is flattered: the note comes above 1 dB and SWR 2, and not before", () => {
    const lossy = aLine(50, 0.66, { loss: [point(7.1, 10)], impedanceAngle: "real" });
    const noted = (length: number, re: number) => okValue(lineReadout(lossy, length, 7.1, { re, im: 0 })).notes.length;
    expect(noted(10.1, 24.9)).toBe(1);
    expect(noted(9.9, 24.9)).toBe(0);
    expect(noted(10.1, 25.1)).toBe(0);
    const found = okValue(lineReadout(lossy, 10, 7.1, { re: 150, im: 0 }));
    expect(found.swrAtAntenna).toBeCloseTo(3, 12);
    expect(found.swrAtRig).toBeLessThan(3);
    expect(found.extraLoss_dB).toBeCloseTo(found.totalLoss_dB - 1, 9);
    expect(found.efficiency).toBeCloseTo(10 ** (-found.totalLoss_dB / 10), 12);
  });

  test("bad input", () => {
    const bad = lineReadout(line, 0, -7, { re: 0, im: Number.NaN });
    expect(bad.ok).toBe(false);
    if (!bad.ok)
      expect(bad.problems.map((p) => p.where)).toEqual([
        "length_m",
        "frequency_MHz",
        "antenna_ohm.re",
        "antenna_ohm.im",
      ]);
    expect(lineReadout(line, -1, 7, load).ok).toBe(false);
  });
});
