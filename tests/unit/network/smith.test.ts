import { describe, expect, test } from "vitest";
import {
  fromReflection,
  matchPath,
  mismatchReadout,
  type Section,
  type SmithCircle,
  smithCircles,
  toReflection,
} from "../../../engine/index.ts";
import { aLine } from "../../support/aLine.ts";

const away = (p: { re: number; im: number }, c: SmithCircle) => Math.hypot(p.re - c.re, p.im - c.im) - c.radius;

test("impedance to reflection and back; short, open, match", () => {
  for (const z of [
    { re: 36.5, im: 21 },
    { re: 0, im: -80 },
    { re: 1000, im: 5 },
  ]) {
    const back = fromReflection(toReflection(z, 75), 75);
    expect(Math.hypot(back.re - z.re, back.im - z.im)).toBeLessThan(1e-10 * (1 + Math.hypot(z.re, z.im)));
  }
  expect(toReflection({ re: 0, im: 0 }, 50)).toEqual({ re: -1, im: 0 });
  expect(toReflection({ re: 50, im: 0 }, 50)).toEqual({ re: 0, im: 0 });
  expect(toReflection({ re: Number.POSITIVE_INFINITY, im: 0 }, 50)).toEqual({ re: 1, im: 0 });
  expect(toReflection({ re: 0, im: Number.NEGATIVE_INFINITY }, 50)).toEqual({ re: 1, im: 0 });
  expect(fromReflection({ re: 1, im: 0 }, 50).re).toBe(Number.POSITIVE_INFINITY);
  expect(mismatchReadout({ re: 50, im: 0 }, 50).returnLoss_dB).toBe(Number.POSITIVE_INFINITY);
});

test("circles hold the impedances they stand for", () => {
  for (const r of [0, 0.2, 1, 5])
    for (const x of [-3, -0.5, 0.5, 2]) {
      const p = toReflection({ re: r, im: x }, 1);
      expect(away(p, smithCircles.resistance(r))).toBeCloseTo(0, 12);
      expect(away(p, smithCircles.reactance(x))).toBeCloseTo(0, 12);
      const size2 = r * r + x * x;
      expect(away(p, smithCircles.conductance(r / size2))).toBeCloseTo(0, 12);
      expect(away(p, smithCircles.susceptance(-x / size2))).toBeCloseTo(0, 12);
    }
  expect(away(toReflection({ re: 3, im: 0 }, 1), smithCircles.swr(3))).toBeCloseTo(0, 12);
  expect(away(toReflection({ re: 1 / 3, im: 0 }, 1), smithCircles.swr(3))).toBeCloseTo(0, 12);
});

describe("the path of a match", () => {
  const antenna = { re: 24, im: -18 };
  const coil: Section = { kind: "series-coil", inductance_uH: 0.9 };
  const capacitor: Section = { kind: "shunt-capacitor", capacitance_pF: 300 };
  const path = matchPath([coil, capacitor], 7.1, antenna, 50, 16);

  test("starts at the antenna, has no gaps, keeps to its circles, ends at the rig", () => {
    expect(path.map((s) => s.points.length)).toEqual([17, 17]);
    const first = toReflection(antenna, 50);
    expect(path[0]!.points[0]).toEqual(first);
    const [join, next] = [path[0]!.points[16]!, path[1]!.points[0]!];
    expect(Math.hypot(join.re - next.re, join.im - next.im)).toBeLessThan(1e-14);
    for (const p of path[0]!.points) expect(away(p, smithCircles.resistance(24 / 50))).toBeCloseTo(0, 12);
    const x = -18 + 2 * Math.PI * 7.1 * 0.9;
    for (const p of path[1]!.points)
      expect(away(p, smithCircles.conductance((50 * 24) / (24 ** 2 + x ** 2)))).toBeCloseTo(0, 12);
    // Coil in series: upwards. Capacitor across: downwards.
    expect(join.im).toBeGreaterThan(first.im);
    expect(path[1]!.points[16]!.im).toBeLessThan(next.im);
  });

  test("a line turns clockwise, by twice its length, about its own impedance", () => {
    const line = aLine(50);
    const eighth = (0.66 * 299.792458) / 7.1 / 8;
    const [step] = matchPath([{ kind: "line", line, length_m: eighth, parallel: 1 }], 7.1, antenna, 50, 8);
    const angle = (p: { re: number; im: number }) => Math.atan2(p.im, p.re);
    const size = Math.hypot(step!.points[0]!.re, step!.points[0]!.im);
    for (const p of step!.points) expect(Math.hypot(p.re, p.im)).toBeCloseTo(size, 12);
    const turned = angle(step!.points[0]!) - angle(step!.points[8]!);
    expect((turned + 2 * Math.PI) % (2 * Math.PI)).toBeCloseTo(Math.PI / 2, 10);
    const lossy = aLine(50, 0.66, { loss: { root_dBPer100m: 30, linear_dBPer100m: 0 }, impedanceAngle: "real" });
    const [spiral] = matchPath([{ kind: "line", line: lossy, length_m: eighth, parallel: 1 }], 7.1, antenna, 50, 8);
    const sizes = spiral!.points.map((p) => Math.hypot(p.re, p.im));
    expect(sizes.every((s, i) => i === 0 || s < sizes[i - 1]!)).toBe(true);
  });

  test("samples must be a whole number above zero", () => {
    expect(() => matchPath([coil], 7.1, antenna, 50, 0)).toThrow(RangeError);
  });
});
