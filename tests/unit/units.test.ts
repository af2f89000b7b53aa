import { describe, expect, test } from "vitest";
import { awgDiameter_mm, fromFeetInches, toFeetInches, wavelength_m } from "../../engine/index.ts";

describe("lengths", () => {
  test("the wavelength at 299.792458 MHz is a metre, by definition", () => {
    expect(wavelength_m(299.792458)).toBe(1);
  });
  test.each([
    [3.048, { sign: 1, feet: 10, inches: 0, eighths: 0 }],
    [-0.0254, { sign: -1, feet: 0, inches: 1, eighths: 0 }],
    [0, { sign: 1, feet: 0, inches: 0, eighths: 0 }],
    [-0.001, { sign: 1, feet: 0, inches: 0, eighths: 0 }],
    [0.0254 * 11.9375, { sign: 1, feet: 1, inches: 0, eighths: 0 }],
    [0.0254 * 11.93, { sign: 1, feet: 0, inches: 11, eighths: 7 }],
    [7.42, { sign: 1, feet: 24, inches: 4, eighths: 1 }],
  ] as const)("%d m", (length_m, split) => {
    expect(toFeetInches(length_m)).toEqual(split);
    expect(Math.abs(fromFeetInches(split) - length_m)).toBeLessThanOrEqual(0.0254 / 16 + 1e-12);
  });
});

describe("American Wire Gauge against a printed table (three decimals of a millimetre)", () => {
  test.each([
    [10, 2.588],
    [12, 2.053],
    [14, 1.628],
    [16, 1.291],
    [18, 1.024],
    [20, 0.812],
  ])("AWG %d", (gauge, diameter_mm) => {
    expect(Math.abs(awgDiameter_mm(gauge) - diameter_mm)).toBeLessThanOrEqual(0.0005);
  });
  test("36 is 0.127 mm (5 mil) and 0000 is 11.684 mm (460 mil), which define the series", () => {
    expect(awgDiameter_mm(36)).toBe(0.127);
    expect(awgDiameter_mm(-3)).toBeCloseTo(11.684, 12);
  });
});
