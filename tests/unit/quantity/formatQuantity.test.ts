import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatFeetInches } from "../../../src/ui/quantity/formatFeetInches.ts";
import { formatOtherUnits, formatQuantity } from "../../../src/ui/quantity/formatQuantity.ts";
import { parseQuantity } from "../../../src/ui/quantity/parseQuantity.ts";
import type { QuantityKind } from "../../../src/ui/quantity/QuantityKind.ts";

describe("formatQuantity", () => {
  test.each<[number, QuantityKind, string, string]>([
    [10.2, "length_m", "10.20 m", "33 ft 5 5/8 in"],
    [10.205, "length_m", "10.205 m", "33 ft 5 3/4 in"],
    [0, "length_m", "0.00 m", "0 in"],
    [-0.05, "length_m", "−0.05 m", "−2 in"],
    [-0.0001, "length_m", "0.00 m", "0 in"],
    [3.048, "length_m", "3.048 m", "10 ft"],
    [0.3047, "length_m", "0.305 m", "1 ft"],
    [1.6, "diameter_mm", "1.6 mm", "0.063 in"],
    [1.62772663379, "diameter_mm", "1.63 mm", "14 AWG"],
    [9.26583324905, "diameter_mm", "9.27 mm", "2/0 AWG"],
    [50, "diameter_mm", "50 mm", "1.969 in"],
    [7.1, "frequency_MHz", "7.100 MHz", "7.100 MHz"],
    [7.10525, "frequency_MHz", "7.10525 MHz", "7.10525 MHz"],
    [0.005, "conductivity_SPerM", "5 mS/m", "5 mS/m"],
    [5, "conductivity_SPerM", "5000 mS/m", "5000 mS/m"],
    [62, "bearing_deg", "062°", "062°"],
    [7.5, "bearing_deg", "007.5°", "007.5°"],
    [359.97, "bearing_deg", "000°", "000°"],
    [422, "bearing_deg", "062°", "062°"],
    [8, "angle_deg", "8°", "8°"],
    [-30.5, "resistance_ohm", "−30.5 Ω", "−30.5 Ω"],
    [100, "power_W", "100 W", "100 W"],
    [300, "distance_km", "300 km", "186.4 mi"],
    [16, "count", "16", "16"],
    [100, "count", "100", "100"],
    [Number.NaN, "length_m", "–", "–"],
  ])("%s as %s is %s or %s", (value, kind, metric, imperial) => {
    expect(formatQuantity(value, kind, "metric")).toBe(metric);
    expect(formatQuantity(value, kind, "imperial")).toBe(imperial);
  });

  test("the other system stands beside lengths and thicknesses only", () => {
    expect(formatOtherUnits(10.2, "length_m", "metric")).toBe("33 ft 5 5/8 in");
    expect(formatOtherUnits(10.2, "length_m", "imperial")).toBe("10.20 m");
    expect(formatOtherUnits(16, "count", "metric")).toBeNull();
  });

  // What each kind shows: half of its last place.
  const places: readonly (readonly [QuantityKind, "metric" | "imperial", number, number, number])[] = [
    ["length_m", "metric", -100, 200, 0.0005],
    ["length_m", "imperial", -100, 200, 0.0254 / 16],
    ["diameter_mm", "metric", 0, 900, 0.005],
    ["frequency_MHz", "metric", 1, 60, 0.5e-6],
    ["conductivity_SPerM", "metric", 0, 10, 0.5e-6],
    ["bearing_deg", "metric", 0, 359.9, 0.05],
    ["resistance_ohm", "metric", -1e4, 1e4, 0.005],
    ["power_W", "metric", 0, 2000, 0.05],
  ];
  test.each(places)(
    "what is shown of %s in %s units is read back to within half its last place",
    (kind, units, least, most, half) => {
      fc.assert(
        fc.property(fc.double({ min: least, max: most, noNaN: true }), (value) => {
          const parsed = parseQuantity(formatQuantity(value, kind, units), kind, { units });
          expect(parsed.ok && Math.abs(parsed.value - value)).toBeLessThanOrEqual(half * (1 + 1e-6));
        }),
        { numRuns: 300, seed: 10 },
      );
    },
  );
});

describe("formatFeetInches", () => {
  test("rounding carries through inches into feet", () => {
    expect(formatFeetInches((12 * 12 - 0.01) * 0.0254)).toBe("12 ft");
    expect(formatFeetInches((11 * 12 + 11.9) * 0.0254)).toBe("11 ft 11 7/8 in");
    expect(formatFeetInches(0.5 * 0.0254)).toBe("1/2 in");
  });
});
